package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.InputPull;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** With a normally-open contact a broken wire looks like an open endstop. */
@Rule(
    id = "GW-E005",
    slug = "contact-hides-broken-wire",
    level = Level.NOTE,
    family = Family.ENDSTOPS,
    summary = "With a normally-open contact a broken wire looks like an open endstop",
    reads = {
      "endstops.*.contact",
      "endstops.*.sensor",
      "endstops.*.input",
      "endstops.*.pullUp",
      "endstops.*.fitted"
    },
    source = "basic safety principle \"use of de-energization\", ISO 13849-2 table D.1 (memory)")
public final class ContactHidesBrokenWire implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Levels.pull(endstop) != InputPull.DRIVEN
                  && Levels.of(endstop)
                      .filter(levels -> !levels.brokenWireDetected())
                      .isPresent()) {
                sink.report(
                    "endstops." + name + ".contact",
                    Levels.words(endstop)
                        + ": a broken or unplugged wire reads as open, and homing drives into the end");
              }
            });
  }
}
