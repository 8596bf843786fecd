package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.HomeEnd;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The input's filter lets the axis run on too far while homing. */
@Rule(
    id = "GW-E011",
    slug = "filter-delays-stop",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The input's filter lets the axis run on too far while homing",
    reads = {"axes.*.homing.end", "axes.*.homing.speed", "endstops.*.pin", "endstops.*.fitted"},
    source =
        "three time constants reach 95 % of a step (identity); 0.1 mm (common practice, no published source)")
public final class FilterDelaysStop implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              HomeEnd end = axis.homing().end();
              Double speed = axis.homing().speed();
              Endstop endstop =
                  end == null
                      ? null
                      : context
                          .profile()
                          .endstops()
                          .get(name + (end == HomeEnd.MIN ? "Min" : "Max"));
              if (!known(endstop, speed) || !Levels.fitted(endstop)) {
                return;
              }
              context
                  .input(endstop)
                  .map(BoardInput::filterMicroseconds)
                  .ifPresent(
                      tau -> {
                        double onward = speed * 3 * tau / 1e6;
                        if (onward > 0.1) {
                          sink.report(
                              "axes." + name + ".homing.speed",
                              n(speed)
                                  + " mm/s for three time constants of "
                                  + n(tau)
                                  + " µs: the axis runs on by "
                                  + about(onward)
                                  + " mm, 0.1 mm is usual at most",
                              Remedy.show(
                                  "home at "
                                      + n(Math.floor(0.1 / (3 * tau / 1e6)))
                                      + " mm/s or less, or fit a smaller capacitor"));
                        }
                      });
            });
  }
}
