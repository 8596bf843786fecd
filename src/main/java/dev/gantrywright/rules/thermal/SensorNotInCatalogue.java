package dev.gantrywright.rules.thermal;

import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.catalog.Sensors;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.stream.Collectors;

/** The catalogue does not know this sensor. */
@Rule(
    id = "GW-T002",
    slug = "sensor-not-in-catalogue",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The catalogue does not know this sensor",
    reads = {"heaters.*.sensor"},
    source = "the program's own catalogue")
public final class SensorNotInCatalogue implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.sensor() != null && Sensors.byId(heater.sensor()).isEmpty()) {
                sink.report(
                    "heaters." + name + ".sensor",
                    "found "
                        + heater.sensor()
                        + "; known are "
                        + Sensors.all().stream().map(Sensor::id).collect(Collectors.joining(", ")),
                    Remedy.show(
                        "read resistance and B value off the sensor's papers and choose the row that has them"));
              }
            });
  }
}
