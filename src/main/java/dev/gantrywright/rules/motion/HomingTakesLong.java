package dev.gantrywright.rules.motion;

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

/** Homing takes minutes. */
@Rule(
    id = "GW-M021",
    slug = "homing-takes-long",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Homing takes minutes",
    reads = {"axes.*.homing.speed", "axes.*.homing.end", "axes.*.travelMin", "axes.*.travelMax"},
    source = "travel over speed (definition); three minutes (common practice, no published source)")
public final class HomingTakesLong implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (!known(
                  axis.homing().end(), axis.homing().speed(), axis.travelMin(), axis.travelMax())) {
                return;
              }
              double travel = axis.travelMax() - axis.travelMin();
              double seconds = travel / axis.homing().speed();
              if (seconds > 180) {
                double speed = Math.ceil(travel / 90);
                String path = "axes." + name + ".homing.speed";
                sink.report(
                    path,
                    n(travel)
                        + " mm at "
                        + n(axis.homing().speed())
                        + " mm/s: "
                        + about(seconds)
                        + " s from end to end; 180 s are usual at most",
                    Remedy.review("Home at " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
