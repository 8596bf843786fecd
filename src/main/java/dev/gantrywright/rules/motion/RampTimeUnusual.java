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

/** Top speed and acceleration do not fit each other. */
@Rule(
    id = "GW-M031",
    slug = "ramp-time-unusual",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "Top speed and acceleration do not fit each other",
    reads = {"axes.*.maxSpeed", "axes.*.acceleration"},
    source =
        "t = v / a; 12 to 600 ms in machines of this kind (common practice, no published source)")
public final class RampTimeUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (!known(axis.maxSpeed(), axis.acceleration()) || axis.acceleration() <= 0) {
                return;
              }
              double millis = axis.maxSpeed() / axis.acceleration() * 1000;
              if (millis < 12 || millis > 600) {
                sink.report(
                    "axes." + name + ".acceleration",
                    n(axis.maxSpeed())
                        + " mm/s at "
                        + n(axis.acceleration())
                        + " mm/s² is reached in "
                        + about(millis)
                        + " ms; 12 to 600 ms are usual");
              }
            });
  }
}
