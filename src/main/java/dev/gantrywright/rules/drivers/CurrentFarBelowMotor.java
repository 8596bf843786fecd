package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The driver is set far below the motor's rated current. */
@Rule(
    id = "GW-D002",
    slug = "current-far-below-motor",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The driver is set far below the motor's rated current",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ratedCurrent"
    },
    source =
        "holding torque is proportional to current up to the rating (motor makers' sheets, memory); 40 % (common practice, no published source)")
public final class CurrentFarBelowMotor implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              RunCurrent run = RunCurrent.of(context, name, axis).orElse(null);
              Double rated = axis.motor().ratedCurrent();
              if (!known(run, rated) || run.rmsAmps() >= 0.4 * rated) {
                return;
              }
              double set = run.rmsAmps();
              double better = Double.parseDouble(n(rated * 0.6));
              sink.report(
                  run.path(),
                  "found "
                      + run.words()
                      + ", the motor is rated "
                      + n(rated)
                      + " A: "
                      + about(100 * set / rated)
                      + " % of its torque",
                  Remedy.review(
                      "Set " + n(better) + " A RMS, 60 % of the rating",
                      run.path(),
                      run.valueFor(better)));
            });
  }
}
