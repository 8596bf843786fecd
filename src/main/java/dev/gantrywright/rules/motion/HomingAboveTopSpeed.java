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

/** The axis homes faster than it may move. */
@Rule(
    id = "GW-M020",
    slug = "homing-above-top-speed",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.SAFE,
    summary = "The axis homes faster than it may move",
    reads = {"axes.*.homing.speed", "axes.*.maxSpeed", "axes.*.homing.end"},
    source = "definition")
public final class HomingAboveTopSpeed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (known(axis.homing().end(), axis.homing().speed(), axis.maxSpeed())
                  && axis.homing().speed() > axis.maxSpeed()) {
                String path = "axes." + name + ".homing.speed";
                sink.report(
                    path,
                    "found "
                        + n(axis.homing().speed())
                        + " mm/s, top speed is "
                        + n(axis.maxSpeed())
                        + " mm/s",
                    Remedy.safe(
                        "Home at " + n(axis.maxSpeed() / 2) + " mm/s", path, axis.maxSpeed() / 2));
              }
            });
  }
}
