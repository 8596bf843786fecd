package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.Trapezoid;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The axis cannot stop soon enough once its endstop is touched. */
@Rule(
    id = "GW-M007",
    slug = "homing-overrun",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "The axis cannot stop soon enough once its endstop is touched",
    reads = {"axes.*.homing.end", "axes.*.homing.speed", "axes.*.acceleration"},
    source =
        "v² = 2 a s; 1 mm as the overtravel that a small switch bears (common practice, no published source)")
public final class HomingOverrun implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (!known(axis.homing().end(), axis.homing().speed(), axis.acceleration())) {
                return;
              }
              double overrun =
                  Trapezoid.distanceToReachMm(axis.homing().speed(), axis.acceleration());
              if (overrun > 1) {
                double speed = Math.floor(Math.sqrt(2 * axis.acceleration()));
                String path = "axes." + name + ".homing.speed";
                sink.report(
                    path,
                    n(axis.homing().speed())
                        + " mm/s at "
                        + n(axis.acceleration())
                        + " mm/s²: "
                        + about(overrun)
                        + " mm to stop, about 1 mm is there behind a switch",
                    Remedy.review("Home at " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
