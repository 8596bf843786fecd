package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Hardly any three-wire sensor works at so low a voltage. */
@Rule(
    id = "GW-E026",
    slug = "three-wire-voltage-unusual",
    level = Level.NOTE,
    family = Family.ENDSTOPS,
    summary = "Hardly any three-wire sensor works at so low a voltage",
    reads = {"endstops.*.sensor", "endstops.*.voltage", "endstops.*.fitted"},
    source =
        "supply ranges of inductive and capacitive sensors, 5 or 6 to 36 V in makers' sheets (memory)")
public final class ThreeWireVoltageUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Levels.threeWire(endstop)
                  && endstop.voltage() != null
                  && endstop.voltage() < 4.5) {
                sink.report(
                    "endstops." + name + ".sensor",
                    "found "
                        + endstop.sensor().word()
                        + " at "
                        + n(endstop.voltage())
                        + " V; such sensors start at 5 or 6 V");
              }
            });
  }
}
