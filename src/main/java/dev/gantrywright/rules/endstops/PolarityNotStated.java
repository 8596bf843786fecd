package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** It is not stated whether the firmware inverts this endstop. */
@Rule(
    id = "GW-E019",
    slug = "polarity-not-stated",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SAFE,
    summary = "It is not stated whether the firmware inverts this endstop",
    reads = {
      "endstops.*.inverted",
      "endstops.*.contact",
      "endstops.*.sensor",
      "endstops.*.input",
      "endstops.*.pullUp",
      "endstops.*.fitted"
    },
    source = "truth table of contact, pull and sensor")
public final class PolarityNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (!Levels.fitted(endstop) || endstop.inverted() != null) {
                return;
              }
              Levels.of(endstop)
                  .ifPresent(
                      levels -> {
                        String path = "endstops." + name + ".inverted";
                        sink.report(
                            path,
                            "none stated; "
                                + Levels.words(endstop)
                                + " needs "
                                + levels.activeLow(),
                            Remedy.safe(
                                "Set it to " + levels.activeLow(), path, levels.activeLow()));
                      });
            });
  }
}
