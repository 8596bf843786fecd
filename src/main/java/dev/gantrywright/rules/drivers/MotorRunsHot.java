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

/** The windings turn more power into heat than the motor's case sheds. */
@Rule(
    id = "GW-D016",
    slug = "motor-runs-hot",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The windings turn more power into heat than the motor's case sheds",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ohms"
    },
    source =
        "P = 2 I² R, both phases at their RMS current (Joule); 10 W for a motor of this class (common practice, no published source)")
public final class MotorRunsHot implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              RunCurrent run = RunCurrent.of(context, name, axis).orElse(null);
              Double ohms = axis.motor().ohms();
              if (!known(run, ohms)) {
                return;
              }
              double amps = run.rmsAmps();
              double watts = 2 * amps * amps * ohms;
              if (watts > 10) {
                double better = Math.floor(Math.sqrt(10 / 2 / ohms) * 100) / 100;
                sink.report(
                    run.path(),
                    n(amps)
                        + " A RMS through "
                        + n(ohms)
                        + " Ω: "
                        + about(watts)
                        + " W in the windings, about 10 W leave the case by itself",
                    Remedy.review("Set " + n(better) + " A RMS", run.path(), run.valueFor(better)));
              }
            });
  }
}
