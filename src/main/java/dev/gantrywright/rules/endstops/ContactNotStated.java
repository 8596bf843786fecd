package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The contact of a fitted endstop is not stated. */
@Rule(
    id = "GW-E020",
    slug = "contact-not-stated",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The contact of a fitted endstop is not stated",
    reads = {"endstops.*.contact", "endstops.*.fitted"},
    source = "truth table of contact, pull and sensor")
public final class ContactNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop) && endstop.contact() == null) {
                sink.report(
                    "endstops." + name + ".contact",
                    "none stated: its polarity cannot be computed",
                    Remedy.show(
                        "with the plug pulled, a continuity tester beeps at rest on a normally-closed contact"));
              }
            });
  }
}
