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

/** The heater is made for another voltage than the supply gives. */
@Rule(
    id = "GW-T006",
    slug = "heater-volts-differ",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The heater is made for another voltage than the supply gives",
    reads = {"heaters.*.volts", "heaters.*.watts", "supply.volts"},
    source = "P = V² / R (Joule): twice the voltage is four times the power")
public final class HeaterVoltsDiffer implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double supply = context.profile().supply().volts();
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              Double rated = heater.volts();
              if (!known(supply, rated)
                  || rated <= 0
                  || rated >= Context.MAINS_VOLTS
                  || Math.abs(supply / rated - 1) <= 0.15) {
                return;
              }
              double times = HeaterPower.powerRatio(supply, rated);
              String watts =
                  heater.watts() == null
                      ? ""
                      : ", "
                          + about(heater.watts() * times)
                          + " W in the place of "
                          + n(heater.watts())
                          + " W";
              sink.report(
                  "heaters." + name + ".volts",
                  "found "
                      + n(rated)
                      + " V on a supply of "
                      + n(supply)
                      + " V: "
                      + about(times)
                      + " times its power"
                      + watts,
                  Remedy.show(
                      times > 1
                          ? "do not switch it on; fit a heater for " + n(supply) + " V"
                          : "fit a heater for " + n(supply) + " V"));
            });
  }
}
