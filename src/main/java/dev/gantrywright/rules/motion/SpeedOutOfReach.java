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

/** The acceleration is too low for the top speed within the travel. */
@Rule(
    id = "GW-M006",
    slug = "speed-out-of-reach",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "The acceleration is too low for the top speed within the travel",
    reads = {"axes.*.travelMin", "axes.*.travelMax", "axes.*.maxSpeed", "axes.*.acceleration"},
    source =
        "v² = 2 a s, from rest to rest; half the travel (common practice, no published source)")
public final class SpeedOutOfReach implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (!known(
                  axis.travelMin(), axis.travelMax(), axis.maxSpeed(), axis.acceleration())) {
                return;
              }
              double travel = axis.travelMax() - axis.travelMin();
              double needed = 2 * Trapezoid.distanceToReachMm(axis.maxSpeed(), axis.acceleration());
              if (travel > 0 && needed > travel / 2) {
                double speed = Math.floor(Math.sqrt(travel / 2 * axis.acceleration()));
                String path = "axes." + name + ".maxSpeed";
                sink.report(
                    path,
                    n(axis.maxSpeed())
                        + " mm/s at "
                        + n(axis.acceleration())
                        + " mm/s² needs "
                        + about(needed)
                        + " mm to speed up and slow down, "
                        + about(100 * needed / travel)
                        + " % of the travel of "
                        + n(travel)
                        + " mm",
                    Remedy.review("Limit to " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
