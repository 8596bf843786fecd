package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** It is not stated that a fuse guards the wires from the supply. */
@Rule(
    id = "GW-P019",
    slug = "fuse-not-stated",
    level = Level.NOTE,
    family = Family.POWER,
    summary = "It is not stated that a fuse guards the wires from the supply",
    reads = {"supply.fuseAmps", "supply.amps"},
    source =
        "principle: a fuse protects the conductor behind it (IEC 60364-4-43); local wiring rules go first")
public final class FuseNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double amps = context.profile().supply().amps();
    boolean onBoard = context.sheet().map(sheet -> sheet.supply().fuseAmps() != null).orElse(false);
    if (amps != null && context.profile().supply().fuseAmps() == null && !onBoard) {
      sink.report(
          "supply.fuseAmps",
          "none stated for a supply of "
              + n(amps)
              + " A, neither in the profile nor on the board sheet: a short circuit has all of it");
    }
  }
}
