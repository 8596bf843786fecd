package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A fitted endstop belongs to no axis of this printer. */
@Rule(
    id = "GW-E021",
    slug = "endstop-without-axis",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A fitted endstop belongs to no axis of this printer",
    reads = {"endstops.*.fitted", "axes.**"},
    source = "definition")
public final class EndstopWithoutAxis implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop) && !context.profile().axes().containsKey(axis(name))) {
                sink.report(
                    "endstops." + name + ".fitted",
                    name
                        + " is fitted; the axes are "
                        + String.join(", ", context.profile().axes().keySet()),
                    Remedy.show("name it after its axis, such as zMin, or add the axis"));
              }
            });
  }

  private static String axis(String endstop) {
    return endstop.endsWith("Min") || endstop.endsWith("Max")
        ? endstop.substring(0, endstop.length() - 3)
        : endstop;
  }
}
