package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The axis takes minutes from end to end at its top speed. */
@Rule(
    id = "GW-M034",
    slug = "crossing-takes-long",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "The axis takes minutes from end to end at its top speed",
    reads = {"axes.*.travelMin", "axes.*.travelMax", "axes.*.maxSpeed"},
    source = "travel over speed (definition); one minute (common practice, no published source)")
public final class CrossingTakesLong implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (!known(axis.travelMin(), axis.travelMax(), axis.maxSpeed())
                  || axis.maxSpeed() <= 0) {
                return;
              }
              double seconds = (axis.travelMax() - axis.travelMin()) / axis.maxSpeed();
              if (seconds > 60) {
                sink.report(
                    "axes." + name + ".maxSpeed",
                    n(axis.travelMax() - axis.travelMin())
                        + " mm at "
                        + n(axis.maxSpeed())
                        + " mm/s: "
                        + about(seconds)
                        + " s from end to end; 60 s are usual at most");
              }
            });
  }
}
