package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.HomeEnd;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Both ends have an endstop, and homing uses one. */
@Rule(
    id = "GW-E008",
    slug = "second-endstop-idle",
    level = Level.NOTE,
    family = Family.ENDSTOPS,
    summary = "Both ends have an endstop, and homing uses one",
    reads = {"axes.*.homing.end", "endstops.*.fitted"},
    source = "common practice, no published source")
public final class SecondEndstopIdle implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Endstop min = context.profile().endstops().get(name + "Min");
              Endstop max = context.profile().endstops().get(name + "Max");
              HomeEnd end = axis.homing().end();
              if (end != null
                  && min != null
                  && max != null
                  && Levels.fitted(min)
                  && Levels.fitted(max)) {
                String idle = name + (end == HomeEnd.MIN ? "Max" : "Min");
                sink.report(
                    "endstops." + idle + ".fitted",
                    name
                        + " homes to "
                        + end.word()
                        + "; the firmware asks "
                        + idle
                        + " only where it guards moves as well");
              }
            });
  }
}
