package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Steps/mm are not stated though the drive gives them. */
@Rule(
    id = "GW-M029",
    slug = "steps-not-stated",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SAFE,
    summary = "Steps/mm are not stated though the drive gives them",
    reads = {
      "axes.*.stepsPerMm",
      "axes.*.motor.fullSteps",
      "axes.*.driver.microsteps",
      "axes.*.drive.**"
    },
    source = "definition: full steps x microsteps x ratio / travel of one turn")
public final class StepsNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.stepsPerMm() == null) {
                DriveTrain.of(axis)
                    .ifPresent(
                        train -> {
                          double gives = Double.parseDouble(n(train.stepsPerMm()));
                          String path = "axes." + name + ".stepsPerMm";
                          sink.report(
                              path,
                              "none stated; " + train.words() + " gives " + n(gives),
                              Remedy.safe("Set " + n(gives) + " steps/mm", path, gives));
                        });
              }
            });
  }
}
