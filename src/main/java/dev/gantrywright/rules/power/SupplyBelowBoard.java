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

/** The supply's voltage is below what the board needs. */
@Rule(
    id = "GW-P004",
    slug = "supply-below-board",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The supply's voltage is below what the board needs",
    reads = {"supply.volts"},
    source = "the board sheet's supply range")
public final class SupplyBelowBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double volts = context.profile().supply().volts();
    Double least = context.sheet().map(s -> s.supply().minVolts()).orElse(null);
    if (known(volts, least) && volts < least) {
      sink.report(
          "supply.volts",
          "found " + n(volts) + " V, the " + context.boardName() + " needs " + n(least) + " V",
          Remedy.show("check the figure, or fit a supply within the board's range"));
    }
  }
}
