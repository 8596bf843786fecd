package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** It is not stated which input a fitted endstop is plugged into. */
@Rule(
    id = "GW-E023",
    slug = "input-not-stated",
    level = Level.NOTE,
    family = Family.ENDSTOPS,
    summary = "It is not stated which input a fitted endstop is plugged into",
    reads = {"endstops.*.pin", "endstops.*.fitted"},
    source = "the board sheet's inputs")
public final class InputNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop) && endstop.pin() == null) {
                sink.report(
                    "endstops." + name + ".pin",
                    "none stated: tolerance, pull and sharing of the input stay unchecked");
              }
            });
  }
}
