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

/** The axis homes very slowly for its top speed. */
@Rule(
    id = "GW-M032",
    slug = "homing-far-below-top-speed",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "The axis homes very slowly for its top speed",
    reads = {"axes.*.homing.end", "axes.*.homing.speed", "axes.*.maxSpeed"},
    source = "a tenth to a half of the top speed (common practice, no published source)")
public final class HomingFarBelowTopSpeed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (known(axis.homing().end(), axis.homing().speed(), axis.maxSpeed())
                  && axis.homing().speed() < 0.05 * axis.maxSpeed()) {
                sink.report(
                    "axes." + name + ".homing.speed",
                    "found "
                        + n(axis.homing().speed())
                        + " mm/s, "
                        + about(100 * axis.homing().speed() / axis.maxSpeed())
                        + " % of the top speed of "
                        + n(axis.maxSpeed())
                        + " mm/s; 10 to 50 % are usual");
              }
            });
  }
}
