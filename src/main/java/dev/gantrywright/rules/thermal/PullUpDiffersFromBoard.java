package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Sensor;
import dev.gantrywright.catalog.Sensors;
import dev.gantrywright.machine.SensorInput;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The firmware reckons with another sensor pull-up than the board fits. */
@Rule(
    id = "GW-T001",
    slug = "pull-up-differs-from-board",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.REVIEW,
    summary = "The firmware reckons with another sensor pull-up than the board fits",
    reads = {"heaters.*.pullUpOhms", "heaters.*.input", "heaters.*.sensor"},
    source = "a divider of pull-up and sensor (definition); the board sheet's sensor inputs")
public final class PullUpDiffersFromBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              Double stated = heater.pullUpOhms();
              Double fitted = context.sensorInput(heater).map(SensorInput::pullUpOhms).orElse(null);
              if (!known(stated, fitted) || Math.abs(stated / fitted - 1) <= 0.02) {
                return;
              }
              String shown = "";
              Sensor sensor =
                  heater.sensor() == null ? null : Sensors.byId(heater.sensor()).orElse(null);
              if (sensor != null && sensor.kind() == Sensor.Kind.NTC) {
                shown =
                    ": at 200 °C it would show "
                        + n(Math.rint(new SensorReading(sensor, fitted, 12).shownWith(stated, 200)))
                        + " °C";
              }
              String path = "heaters." + name + ".pullUpOhms";
              sink.report(
                  path,
                  "found " + n(stated) + " Ω, the board fits " + n(fitted) + " Ω" + shown,
                  Remedy.review("Take the board's " + n(fitted) + " Ω", path, fitted));
            });
  }
}
