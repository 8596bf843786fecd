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

/** The driver is set above the motor's rated current. */
@Rule(
    id = "GW-D001",
    slug = "current-above-motor",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The driver is set above the motor's rated current",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ratedCurrent"
    },
    source = "the motor's data sheet; copper loss grows with the square of the current (Joule)")
public final class CurrentAboveMotor implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              RunCurrent run = RunCurrent.of(context, name, axis).orElse(null);
              Double rated = axis.motor().ratedCurrent();
              if (!known(run, rated) || run.rmsAmps() <= rated) {
                return;
              }
              double set = run.rmsAmps();
              String peak =
                  Math.abs(set / rated - Math.sqrt(2)) < 0.02
                      ? "; the ratio is √2: a peak current stands where RMS belongs"
                      : "";
              double better = Double.parseDouble(n(rated * 0.8));
              sink.report(
                  run.path(),
                  "found "
                      + run.words()
                      + ", the motor is rated "
                      + n(rated)
                      + " A: "
                      + about(100 * (set * set / rated / rated - 1))
                      + " % more heat in the windings"
                      + peak,
                  Remedy.review(
                      "Set " + n(better) + " A RMS, 80 % of the rating",
                      run.path(),
                      run.valueFor(better)));
            });
  }
}
