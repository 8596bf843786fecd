package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.physics.Wire;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Much of the heater's voltage is lost in its cable. */
@Rule(
    id = "GW-T018",
    slug = "voltage-drop-large",
    level = Level.WARNING,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Much of the heater's voltage is lost in its cable",
    reads = {"heaters.*.wire", "heaters.*.wireLength", "heaters.*.watts", "heaters.*.volts"},
    source =
        "drop = 2 I l ρ / A, copper 0.017241 Ω mm²/m at 20 °C (IEC 60028); 3 % (common practice, no published source)")
public final class VoltageDropLarge implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (!known(heater.wire(), heater.wireLength(), heater.watts(), heater.volts())
                  || heater.volts() <= 0
                  || heater.wire() <= 0) {
                return;
              }
              double amps = HeaterPower.amps(heater.volts(), heater.watts());
              double drop = Wire.dropVolts(amps, heater.wireLength(), heater.wire());
              if (drop > 0.03 * heater.volts()) {
                sink.report(
                    "heaters." + name + ".wireLength",
                    about(amps)
                        + " A through 2 x "
                        + n(heater.wireLength())
                        + " m of "
                        + n(heater.wire())
                        + " mm²: "
                        + about(drop)
                        + " V lost, "
                        + about(100 * drop / heater.volts())
                        + " % of "
                        + n(heater.volts())
                        + " V, "
                        + about(drop * amps)
                        + " W in the cable",
                    Remedy.show("fit thicker or shorter wires"));
              }
            });
  }
}
