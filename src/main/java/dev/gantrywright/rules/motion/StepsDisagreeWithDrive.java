package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Steps/mm are not what motor, microsteps and drive give. */
@Rule(
    id = "GW-M001",
    slug = "steps-disagree-with-drive",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Steps/mm are not what motor, microsteps and drive give",
    reads = {
      "axes.*.stepsPerMm",
      "axes.*.motor.fullSteps",
      "axes.*.driver.microsteps",
      "axes.*.drive.**"
    },
    source =
        "definition: full steps x microsteps x ratio / travel of one turn; 5 % is beyond wear (common practice, no published source)")
public final class StepsDisagreeWithDrive implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double found = axis.stepsPerMm();
              DriveTrain train = DriveTrain.of(axis).orElse(null);
              if (!known(found, train) || Math.abs(found / train.stepsPerMm() - 1) <= 0.05) {
                return;
              }
              double gives = Double.parseDouble(n(train.stepsPerMm()));
              String path = "axes." + name + ".stepsPerMm";
              sink.report(
                  path,
                  "found "
                      + n(found)
                      + ", the drive gives "
                      + n(gives)
                      + ": "
                      + Slip.explain(found / train.stepsPerMm(), axis, context.catalog())
                      + " ("
                      + train.words()
                      + ")",
                  Remedy.review("Set " + n(gives) + " steps/mm", path, gives));
            });
  }
}
