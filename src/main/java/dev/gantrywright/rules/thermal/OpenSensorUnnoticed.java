package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.catalog.Sensors;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The lower limit does not notice a sensor that is torn off. */
@Rule(
    id = "GW-T011",
    slug = "open-sensor-unnoticed",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "The lower limit does not notice a sensor that is torn off",
    reads = {
      "heaters.*.minimum",
      "heaters.*.sensor",
      "heaters.*.pullUpOhms",
      "heaters.*.input",
      "board.mcu"
    },
    source =
        "an NTC grows without bound as it cools, so an open wire reads as deep cold (identity); rooms of 5 °C or more (common practice, no published source)")
public final class OpenSensorUnnoticed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              Sensor sensor =
                  heater.sensor() == null ? null : Sensors.byId(heater.sensor()).orElse(null);
              if (sensor == null
                  || heater.minimum() == null
                  || sensor.kind() != Sensor.Kind.NTC
                  || heater.minimum() >= 2) {
                return;
              }
              String path = "heaters." + name + ".minimum";
              sink.report(
                  path,
                  "found "
                      + n(heater.minimum())
                      + " °C; a broken wire makes this sensor read far below 0 °C, and a poor contact somewhat below: the limit must lie above, 5 °C is usual",
                  Remedy.review("Take 5 °C", path, 5));
            });
  }
}
