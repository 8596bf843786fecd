package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Mcu;
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

/** The converter cannot tell degrees apart at the top temperature. */
@Rule(
    id = "GW-T005",
    slug = "converter-too-coarse",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The converter cannot tell degrees apart at the top temperature",
    reads = {
      "heaters.*.maximum",
      "heaters.*.sensor",
      "heaters.*.pullUpOhms",
      "heaters.*.input",
      "board.mcu"
    },
    source =
        "slope of the divider at the limit, one count of the converter; 4 K a count (common practice, no published source)")
public final class ConverterTooCoarse implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              Sensor sensor =
                  heater.sensor() == null ? null : Sensors.byId(heater.sensor()).orElse(null);
              Integer bits =
                  context
                      .sensorInput(heater)
                      .map(SensorInput::bits)
                      .or(() -> context.mcu().map(Mcu::adcBits))
                      .orElse(null);
              if (sensor == null
                  || !known(heater.maximum(), heater.pullUpOhms(), bits)
                  || heater.pullUpOhms() <= 0
                  || heater.maximum() > 800) {
                return;
              }
              double kelvin =
                  new SensorReading(sensor, heater.pullUpOhms(), bits)
                      .kelvinPerCount(heater.maximum());
              if (kelvin > 4) {
                sink.sourced(
                    "heaters." + name + ".sensor",
                    "at "
                        + n(heater.maximum())
                        + " °C one count of "
                        + bits
                        + " bits is "
                        + about(kelvin)
                        + " K ("
                        + sensor.name()
                        + " under "
                        + n(heater.pullUpOhms())
                        + " Ω); 4 K is coarse already",
                    sensor.source(),
                    Remedy.show(
                        "fit a smaller pull-up, or an amplifier or a converter made for this sensor"));
              }
            });
  }
}
