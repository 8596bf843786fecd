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

/** The supply runs close to its rating. */
@Rule(
    id = "GW-P002",
    slug = "supply-without-margin",
    level = Level.WARNING,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The supply runs close to its rating",
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
    source = "80 % of the rating for continuous load (common practice, no published source)")
public final class SupplyWithoutMargin implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    Double rated = context.profile().supply().amps();
    if (known(budget, rated) && budget.amps() > 0.8 * rated && budget.amps() <= rated) {
      sink.report(
          "supply.amps",
          "found "
              + n(rated)
              + " A; "
              + budget.words()
              + ", "
              + about(100 * budget.amps() / rated)
              + " % of it; 80 % is usual at most",
          Remedy.show("fit a larger supply, or let bed and hot end heat up one after the other"));
    }
  }
}
