package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The pin bears this voltage only with its own pull-up off. */
@Rule(
    id = "GW-E017",
    slug = "tolerance-lost-with-pull",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SAFE,
    summary = "The pin bears this voltage only with its own pull-up off",
    reads = {
      "endstops.*.voltage",
      "endstops.*.pin",
      "endstops.*.pullUp",
      "endstops.*.fitted",
      "board.mcu"
    },
    source =
        "STM32 data sheets, note on 5 V tolerant pins: internal pull-up and pull-down resistors must be disabled")
public final class ToleranceLostWithPull implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.mcu().isEmpty() || !context.mcu().get().toleranceLostWithPull()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    double limit = mcu.familyFacts().plainPinToleranceVolts();
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Levels.fitted(endstop)
                  && Boolean.TRUE.equals(endstop.pullUp())
                  && endstop.voltage() != null
                  && endstop.voltage() > limit) {
                String path = "endstops." + name + ".pullUp";
                sink.sourced(
                    path,
                    "found "
                        + n(endstop.voltage())
                        + " V with the pull-up on; a pin of the "
                        + mcu.part()
                        + " then bears "
                        + n(limit)
                        + " V",
                    mcu.familyFacts().source(),
                    Remedy.safe("Switch the part's own pull-up off", path, false));
              }
            });
  }
}
