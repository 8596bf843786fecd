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

/** The supply's voltage is above what the board bears. */
@Rule(
    id = "GW-P003",
    slug = "supply-above-board",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The supply's voltage is above what the board bears",
    reads = {"supply.volts"},
    source = "the board sheet's supply range")
public final class SupplyAboveBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double volts = context.profile().supply().volts();
    Double most = context.sheet().map(s -> s.supply().maxVolts()).orElse(null);
    if (known(volts, most) && volts > most) {
      sink.report(
          "supply.volts",
          "found " + n(volts) + " V, the " + context.boardName() + " bears " + n(most) + " V",
          Remedy.show("do not connect it; fit a supply within the board's range"));
    }
  }
}
