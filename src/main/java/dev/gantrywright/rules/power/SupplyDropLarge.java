package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.Wire;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Much of the supply's voltage is lost on the way to the board. */
@Rule(
    id = "GW-P013",
    slug = "supply-drop-large",
    level = Level.WARNING,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Much of the supply's voltage is lost on the way to the board",
    reads = {
      "supply.volts",
      "supply.wire",
      "supply.wireLength",
      "heaters.*.watts",
      "heaters.*.volts",
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ohms"
    },
    source =
        "drop = 2 I l ρ / A, copper 0.017241 Ω mm²/m at 20 °C (IEC 60028); 2.5 % (common practice, no published source)")
public final class SupplyDropLarge implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    Double wire = context.profile().supply().wire();
    Double length = context.profile().supply().wireLength();
    if (!known(budget, wire, length) || wire <= 0) {
      return;
    }
    double drop = Wire.dropVolts(budget.amps(), length, wire);
    double volts = context.profile().supply().volts();
    if (drop > 0.025 * volts) {
      sink.report(
          "supply.wireLength",
          about(budget.amps())
              + " A through 2 x "
              + n(length)
              + " m of "
              + n(wire)
              + " mm²: "
              + about(drop)
              + " V lost, "
              + about(100 * drop / volts)
              + " % of "
              + n(volts)
              + " V",
          Remedy.show("fit thicker or shorter wires"));
    }
  }
}
