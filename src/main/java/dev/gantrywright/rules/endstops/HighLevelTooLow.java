package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.InputLevel;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The signal's high level is too low for the input. */
@Rule(
    id = "GW-E016",
    slug = "high-level-too-low",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The signal's high level is too low for the input",
    reads = {"endstops.*.voltage", "endstops.*.pin", "endstops.*.fitted", "board.mcu"},
    source =
        "input high threshold in the parts' data sheets, DC characteristics: 0.6 of the supply for AVR parts, 0.7 at most elsewhere (memory)")
public final class HighLevelTooLow implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (!Levels.fitted(endstop)
                  || endstop.voltage() == null
                  || context.logicVolts().isEmpty()) {
                return;
              }
              double needed = InputLevel.thresholdVolts(share(context), context.logicVolts().get());
              if (endstop.voltage() < needed) {
                sink.report(
                    "endstops." + name + ".voltage",
                    "found "
                        + n(endstop.voltage())
                        + " V; an input of a "
                        + n(context.logicVolts().get())
                        + " V board takes "
                        + n(needed)
                        + " V for high",
                    Remedy.show("feed the sensor so that its high level reaches the board's own"));
              }
            });
  }

  private static double share(Context context) {
    return context.mcu().filter(mcu -> mcu.core().equals("AVR")).isPresent() ? 0.6 : 0.7;
  }
}
