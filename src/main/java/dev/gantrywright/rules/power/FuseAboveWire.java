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

/** The fuse lets more current pass than its wire bears. */
@Rule(
    id = "GW-P006",
    slug = "fuse-above-wire",
    level = Level.ERROR,
    family = Family.POWER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The fuse lets more current pass than its wire bears",
    reads = {"supply.fuseAmps", "supply.wire"},
    source =
        "principle: a fuse protects the conductor behind it (IEC 60364-4-43); 6 A/mm², as 1.5 mm² carries 9 A at 55 °C in a closed duct (IEC 60364-5-52, method B2), for other sizes common practice, no published source; local wiring rules go first")
public final class FuseAboveWire implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double fuse = context.profile().supply().fuseAmps();
    Double wire = context.profile().supply().wire();
    if (known(fuse, wire) && fuse > 6 * wire) {
      sink.report(
          "supply.fuseAmps",
          "found "
              + n(fuse)
              + " A over "
              + n(wire)
              + " mm²: the wire bears about "
              + n(6 * wire)
              + " A",
          Remedy.show("fit a smaller fuse or a thicker wire, with the machine unplugged"));
    }
  }
}
