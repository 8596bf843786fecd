package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** X and Y have different limits on shared belts. */
@Rule(
    id = "GW-M019",
    slug = "crossed-belt-limits-differ",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "X and Y have different limits on shared belts",
    reads = {
      "kinematics",
      "axes.x.maxSpeed",
      "axes.y.maxSpeed",
      "axes.x.acceleration",
      "axes.y.acceleration"
    },
    source = "kinematics of two crossed belts")
public final class CrossedBeltLimitsDiffer implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Axis x = context.profile().axes().get("x");
    Axis y = context.profile().axes().get("y");
    if (context.profile().kinematics() != Kinematics.COREXY || !known(x, y)) {
      return;
    }
    if (known(x.maxSpeed(), y.maxSpeed()) && !x.maxSpeed().equals(y.maxSpeed())) {
      sink.report(
          "axes.y.maxSpeed",
          "found "
              + n(y.maxSpeed())
              + " mm/s, x has "
              + n(x.maxSpeed())
              + " mm/s; both motors turn for either axis");
    }
    if (known(x.acceleration(), y.acceleration()) && !x.acceleration().equals(y.acceleration())) {
      sink.report(
          "axes.y.acceleration",
          "found "
              + n(y.acceleration())
              + " mm/s², x has "
              + n(x.acceleration())
              + " mm/s²; both motors turn for either axis");
    }
  }
}
