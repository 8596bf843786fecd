package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.Fuse;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;

/** A fuse is smaller than the load that it carries. */
@Rule(
    id = "GW-P005",
    slug = "fuse-below-load",
    level = Level.WARNING,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A fuse is smaller than the load that it carries",
    reads = {
      "supply.volts",
      "supply.fuseAmps",
      "heaters.*.watts",
      "heaters.*.volts",
      "heaters.*.relayAmps",
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ohms"
    },
    source = "IEC 60127: a fuse carries its rating; UL 248-14: load to 75 %")
public final class FuseBelowLoad implements Check {
  @Override
  public void check(Context context, Sink sink) {
    PowerBudget budget = PowerBudget.of(context).orElse(null);
    if (budget == null) {
      return;
    }
    Map<String, Double> fuses = new LinkedHashMap<>();
    fuses.put("supply.fuseAmps", context.profile().supply().fuseAmps());
    fuses.put("board.sheet", context.sheet().map(s -> s.supply().fuseAmps()).orElse(null));
    fuses.forEach(
        (path, rating) -> {
          if (rating != null && budget.amps() > rating) {
            sink.report(
                path,
                "found "
                    + n(rating)
                    + " A; "
                    + budget.words()
                    + "; least rating "
                    + n(Math.ceil(Fuse.leastRatingAmps(budget.amps(), Fuse.IEC_SHARE)))
                    + " A (IEC 60127), "
                    + n(Math.ceil(Fuse.leastRatingAmps(budget.amps(), Fuse.UL_SHARE)))
                    + " A (UL 248-14)",
                Remedy.show("lower the load; a larger fuse only where wires and board bear it"));
          }
        });
  }
}
