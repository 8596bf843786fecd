package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Sensor and pull drive the same level, so the input never changes. */
@Rule(
    id = "GW-E014",
    slug = "sensor-matches-pull-level",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Sensor and pull drive the same level, so the input never changes",
    reads = {"endstops.*.sensor", "endstops.*.input", "endstops.*.pullUp", "endstops.*.fitted"},
    source =
        "IEC 60947-5-2: an NPN output sinks, a PNP output sources, neither drives the other level")
public final class SensorMatchesPullLevel implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (!Levels.fitted(endstop) || !Levels.threeWire(endstop)) {
                return;
              }
              InputPull pull = Levels.pull(endstop);
              boolean stuck =
                  endstop.sensor() == SensorKind.NPN
                      ? pull == InputPull.PULL_DOWN
                      : pull == InputPull.PULL_UP;
              if (stuck) {
                sink.report(
                    "endstops." + name + ".sensor",
                    "found "
                        + endstop.sensor().word()
                        + " on "
                        + pull.word()
                        + ": the input stays "
                        + (pull == InputPull.PULL_UP ? "high" : "low")
                        + " whether touched or not",
                    Remedy.show(
                        endstop.sensor() == SensorKind.NPN
                            ? "use an input with a pull-up, or a PNP sensor"
                            : "use an NPN sensor, or an input with a pull-down and no pull-up"));
              }
            });
  }
}
