package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The wires from supply to board are too thin for the load. */
@Rule(
    id = "GW-P015",
    slug = "supply-wire-too-thin",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The wires from supply to board are too thin for the load",
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
    source =
        "6 A/mm², as 1.5 mm² carries 9 A at 55 °C in a closed duct (IEC 60364-5-52, method B2); for other sizes common practice, no published source; local wiring rules go first")
public final class SupplyWireTooThin implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    Double wire = context.profile().supply().wire();
    if (known(budget, wire) && budget.amps() > 6 * wire) {
      sink.report(
          "supply.wire",
          "found "
              + n(wire)
              + " mm²; "
              + budget.words()
              + ": "
              + about(budget.amps() / wire)
              + " A/mm²; at least "
              + n(Math.ceil(budget.amps() / 6 * 100) / 100)
              + " mm²",
          Remedy.show(
              "fit wires of the next larger standard size, with ferrules, machine unplugged"));
    }
  }
}
