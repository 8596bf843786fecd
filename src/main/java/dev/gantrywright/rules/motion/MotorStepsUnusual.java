package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** Hardly any motor makes this many full steps a turn. */
@Rule(
    id = "GW-M017",
    slug = "motor-steps-unusual",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Hardly any motor makes this many full steps a turn",
    reads = {"axes.*.motor.fullSteps"},
    source =
        "step angles of 0.9°, 1.8°, 3.6°, 3.75°, 7.5°, 15° and 18° (common practice, no published source)")
public final class MotorStepsUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Integer full = axis.motor().fullSteps();
              if (full != null && !List.of(20, 24, 48, 96, 100, 200, 400).contains(full)) {
                sink.report(
                    "axes." + name + ".motor.fullSteps",
                    "found "
                        + full
                        + ", a step angle of "
                        + n(360.0 / full)
                        + "°; 200 (1.8°) and 400 (0.9°) are usual",
                    Remedy.show("read the step angle on the motor's label"));
              }
            });
  }
}
