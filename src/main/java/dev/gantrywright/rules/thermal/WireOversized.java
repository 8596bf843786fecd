package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater's wires are far thicker than it needs. */
@Rule(
    id = "GW-T024",
    slug = "wire-oversized",
    level = Level.NOTE,
    family = Family.THERMAL,
    summary = "The heater's wires are far thicker than it needs",
    reads = {"heaters.*.wire", "heaters.*.watts", "heaters.*.volts"},
    source = "0.5 A/mm² (common practice, no published source); AWG 20 is 0.52 mm² (ASTM B258)")
public final class WireOversized implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (!known(heater.wire(), heater.watts(), heater.volts())
                  || heater.volts() <= 0
                  || heater.wire() <= 0) {
                return;
              }
              double amps = HeaterPower.amps(heater.volts(), heater.watts());
              if (amps / heater.wire() < 0.5) {
                sink.report(
                    "heaters." + name + ".wire",
                    "found "
                        + n(heater.wire())
                        + " mm² for "
                        + about(amps)
                        + " A: "
                        + about(amps / heater.wire())
                        + " A/mm²");
              }
            });
  }
}
