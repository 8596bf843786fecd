package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The machine draws more than the supply gives. */
@Rule(
    id = "GW-P001",
    slug = "supply-overloaded",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The machine draws more than the supply gives",
    reads = {
      "supply.volts",
      "supply.amps",
      "heaters.*.watts",
      "heaters.*.volts",
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ohms"
    },
    source = "I = P / V for each heater; 2 I² R for each motor at rest (Joule)")
public final class SupplyOverloaded implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    Double rated = context.profile().supply().amps();
    if (known(budget, rated) && budget.amps() > rated) {
      sink.report(
          "supply.amps",
          "found " + n(rated) + " A; " + budget.words(),
          Remedy.show("fit a larger supply, or a smaller bed heater"));
    }
  }
}
