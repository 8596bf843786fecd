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
import java.util.Map;

/** The three columns are not set alike. */
@Rule(
    id = "GW-M011",
    slug = "column-unequal",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "The three columns are not set alike",
    reads = {"kinematics", "axes.**"},
    source =
        "geometry of three columns with arms of equal length: h = z + sqrt(L² - d²), the same for each")
public final class ColumnUnequal implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, Axis> axes = context.profile().axes();
    if (context.profile().kinematics() != Kinematics.DELTA
        || !known(axes.get("x"), axes.get("y"), axes.get("z"))) {
      return;
    }
    Pair.report(
        sink, "x", axes.get("x"), "y", axes.get("y"), "the bed then looks tilted and curved");
    Pair.report(
        sink, "x", axes.get("x"), "z", axes.get("z"), "the bed then looks tilted and curved");
  }
}
