package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Both ports are the same one. */
@Rule(
    id = "GW-S008",
    slug = "second-port-is-first",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.SAFE,
    summary = "Both ports are the same one",
    reads = {"serial.port", "serial.secondPort"},
    source = "definition")
public final class SecondPortIsFirst implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer first = context.profile().serial().port();
    if (first != null && first.equals(context.profile().serial().secondPort())) {
      sink.report(
          "serial.secondPort",
          "found " + first + " for both",
          Remedy.safe("Take the second port out", "serial.secondPort", null));
    }
  }
}
