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

/** The temperature limit is above what the sensor is made for. */
@Rule(
    id = "GW-T003",
    slug = "limit-above-sensor",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "The temperature limit is above what the sensor is made for",
    reads = {"heaters.*.maximum", "heaters.*.sensor"},
    source = "the sensor's data sheet, highest temperature")
public final class LimitAboveSensor implements Check {
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
                  || heater.maximum() == null
                  || heater.maximum() <= sensor.mostCelsius()) {
                return;
              }
              String path = "heaters." + name + ".maximum";
              double limit = sensor.mostCelsius() - 15;
              sink.sourced(
                  path,
                  "found "
                      + n(heater.maximum())
                      + " °C; a "
                      + sensor.name()
                      + " is made for up to "
                      + n(sensor.mostCelsius())
                      + " °C",
                  sensor.source(),
                  Remedy.review("Limit to " + n(limit) + " °C", path, limit));
            });
  }
}
