package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;

/** Steps/mm were tuned away from what a toothed drive fixes. */
@Rule(
    id = "GW-M013",
    slug = "steps-drifted-from-drive",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Steps/mm were tuned away from what a toothed drive fixes",
    reads = {
      "axes.*.stepsPerMm",
      "axes.*.motor.fullSteps",
      "axes.*.driver.microsteps",
      "axes.*.drive.**"
    },
    source =
        "definition; pitch tolerance of belts and screws is below 0.2 % (common practice, no published source)")
public final class StepsDriftedFromDrive implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double found = axis.stepsPerMm();
              DriveTrain train = DriveTrain.of(axis).orElse(null);
              if (!known(found, train) || axis.drive().kind() == DriveKind.GEAR) {
                return;
              }
              double off = (found / train.stepsPerMm() - 1) * 100;
              if (Math.abs(off) > 0.5 && Math.abs(off) <= 5) {
                double gives = Double.parseDouble(n(train.stepsPerMm()));
                String path = "axes." + name + ".stepsPerMm";
                sink.report(
                    path,
                    "found "
                        + n(found)
                        + ", the drive fixes "
                        + n(gives)
                        + " ("
                        + train.words()
                        + "): out by "
                        + Shown.percent(off),
                    Remedy.review("Set " + n(gives) + " steps/mm", path, gives));
              }
            });
  }
}
