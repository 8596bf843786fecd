package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The voltage of a three-wire sensor is not stated. */
@Rule(
    id = "GW-E015",
    slug = "sensor-voltage-unstated",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The voltage of a three-wire sensor is not stated",
    reads = {"endstops.*.sensor", "endstops.*.voltage", "endstops.*.fitted"},
    source = "IEC 60947-5-2: output level follows the sensor's supply")
public final class SensorVoltageUnstated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Levels.threeWire(endstop)
                  && endstop.voltage() == null) {
                sink.report(
                    "endstops." + name + ".voltage",
                    "none stated for a sensor of kind "
                        + endstop.sensor().word()
                        + ", which usually runs on 6 to 36 V",
                    Remedy.show(
                        "state the highest voltage on the output wire; measure it before it meets the board"));
              }
            });
  }
}
