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

/** The supply is many times larger than the load. */
@Rule(
    id = "GW-P017",
    slug = "supply-far-above-load",
    level = Level.NOTE,
    family = Family.POWER,
    summary = "The supply is many times larger than the load",
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
    source = "30 to 80 % of the rating (common practice, no published source)")
public final class SupplyFarAboveLoad implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    Double rated = context.profile().supply().amps();
    if (known(budget, rated)
        && budget.whole()
        && budget.amps() > 0
        && budget.amps() < 0.15 * rated) {
      sink.report(
          "supply.amps",
          "found "
              + n(rated)
              + " A; "
              + budget.words()
              + ", "
              + about(100 * budget.amps() / rated)
              + " % of it; 30 to 80 % are usual");
    }
  }
}
