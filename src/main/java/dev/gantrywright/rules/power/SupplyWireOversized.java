package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The wires from supply to board are far thicker than the load needs. */
@Rule(
    id = "GW-P018",
    slug = "supply-wire-oversized",
    level = Level.NOTE,
    family = Family.POWER,
    summary = "The wires from supply to board are far thicker than the load needs",
    reads = {
      "supply.volts",
      "supply.wire",
      "heaters.*.watts",
      "heaters.*.volts",
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ohms"
    },
    source = "0.6 A/mm² (common practice, no published source); AWG 12 is 3.3 mm² (ASTM B258)")
public final class SupplyWireOversized implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    Double wire = context.profile().supply().wire();
    if (known(budget, wire) && budget.whole() && budget.amps() > 0 && budget.amps() < 0.6 * wire) {
      sink.report(
          "supply.wire",
          "found "
              + n(wire)
              + " mm²; "
              + budget.words()
              + ": "
              + about(budget.amps() / wire)
              + " A/mm²");
    }
  }
}
