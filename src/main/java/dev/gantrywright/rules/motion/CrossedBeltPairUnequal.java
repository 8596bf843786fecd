package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The two motors of the crossed belts are not set alike. */
@Rule(
    id = "GW-M010",
    slug = "crossed-belt-pair-unequal",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "The two motors of the crossed belts are not set alike",
    reads = {"kinematics", "axes.x.**", "axes.y.**"},
    source =
        "kinematics of two crossed belts: x = (A + B) / 2, y = (A - B) / 2 holds only for equal steps")
public final class CrossedBeltPairUnequal implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Axis x = context.profile().axes().get("x");
    Axis y = context.profile().axes().get("y");
    if (context.profile().kinematics() != Kinematics.COREXY || !known(x, y)) {
      return;
    }
    Pair.report(sink, "x", x, "y", y, "a move along X then drifts along Y");
  }
}
