package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.physics.DeltaDrive;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;
import java.util.Map;

/** The arms of a delta printer are not equally long. */
@Rule(
    id = "GW-M038",
    slug = "arms-unequal",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "The arms of the three columns are not equally long",
    reads = {"kinematics", "axes.*.armLength"},
    source =
        "geometry of three columns with arms of equal length: h = z + sqrt(L² - d²), the same L for each")
public final class ArmsUnequal implements Check {
  /** Finer than a rule or caliper tells two arms apart: common practice, no published source. */
  private static final double SAME_MM = 0.05;

  @Override
  public void check(Context context, Sink sink) {
    Map<String, Axis> axes = context.profile().axes();
    if (context.profile().kinematics() != Kinematics.DELTA || axes.get("x") == null) {
      return;
    }
    Double wanted = axes.get("x").armLength();
    for (String name : List.of("y", "z")) {
      Double found = axes.get(name) == null ? null : axes.get(name).armLength();
      if (known(wanted, found) && Math.abs(found - wanted) > SAME_MM) {
        String path = "axes." + name + ".armLength";
        sink.report(
            path,
            "found " + n(found) + " mm, x has " + n(wanted) + " mm: " + tilt(wanted, found),
            Remedy.review("Set " + n(wanted) + " mm as on x", path, wanted));
      }
    }
  }

  /** How far the carriage of the column stands wrong over the middle and over its own foot. */
  private static String tilt(double wanted, double found) {
    // Half the arm is a usual radius: common practice, no published source.
    double radius = wanted / 2;
    double middle = height(radius, found, 0) - height(radius, wanted, 0);
    double foot = height(radius, found, radius) - height(radius, wanted, radius);
    return "at a radius of half the arm the nozzle stands "
        + about(Math.abs(middle))
        + " mm wrong over the middle of the bed and "
        + about(Math.abs(foot))
        + " mm at the foot of the column";
  }

  private static double height(double radius, double arm, double towards) {
    return DeltaDrive.carriageMm(radius, arm, 0, towards, 0, 0);
  }
}
