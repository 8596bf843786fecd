package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The heater's wires are too thin for its current. */
@Rule(
    id = "GW-T009",
    slug = "wire-too-thin",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater's wires are too thin for its current",
    reads = {"heaters.*.wire", "heaters.*.watts", "heaters.*.volts"},
    source =
        "6 A/mm², as 1.5 mm² carries 9 A at 55 °C in a closed duct (IEC 60364-5-52, method B2); for other sizes common practice, no published source; local wiring rules go first")
public final class WireTooThin implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (!known(heater.wire(), heater.watts(), heater.volts()) || heater.volts() <= 0) {
                return;
              }
              double amps = HeaterPower.amps(heater.volts(), heater.watts());
              if (amps / heater.wire() > 6) {
                sink.report(
                    "heaters." + name + ".wire",
                    "found "
                        + n(heater.wire())
                        + " mm² for "
                        + about(amps)
                        + " A: "
                        + about(amps / heater.wire())
                        + " A/mm²; at least "
                        + n(Math.ceil(amps / 6 * 100) / 100)
                        + " mm²",
                    Remedy.show("fit wires of the next larger standard size, with ferrules"));
              }
            });
  }
}
