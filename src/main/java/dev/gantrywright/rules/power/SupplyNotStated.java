package dev.gantrywright.rules.power;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The supply is not fully stated, so its load stays unchecked. */
@Rule(
    id = "GW-P014",
    slug = "supply-not-stated",
    level = Level.NOTE,
    family = Family.POWER,
    summary = "The supply is not fully stated, so its load stays unchecked",
    reads = {"supply.volts", "supply.amps"},
    source = "the profile")
public final class SupplyNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.profile().supply().volts() == null || context.profile().supply().amps() == null) {
      String what = context.profile().supply().volts() == null ? "voltage" : "rated current";
      sink.report(
          context.profile().supply().volts() == null ? "supply.volts" : "supply.amps",
          "no " + what + " stated: load, drivers and heaters are not compared with it");
    }
  }
}
