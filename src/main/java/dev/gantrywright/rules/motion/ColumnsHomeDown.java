package dev.gantrywright.rules.motion;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.HomeEnd;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** A column of a delta printer homes downward. */
@Rule(
    id = "GW-M039",
    slug = "columns-home-down",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "A column of a delta printer homes downward",
    reads = {"kinematics", "axes.*.homing.end"},
    source =
        "geometry of three columns: the carriages have nothing below them to stop at; endstops at the top (common practice, no published source)")
public final class ColumnsHomeDown implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.profile().kinematics() != Kinematics.DELTA) {
      return;
    }
    for (String name : List.of("x", "y", "z")) {
      Axis axis = context.profile().axes().get(name);
      if (axis != null && axis.homing().end() == HomeEnd.MIN) {
        String path = "axes." + name + ".homing.end";
        sink.report(
            path,
            "found min: the carriage drives down, and the nozzle into the bed",
            Remedy.review("Home " + name + " to max", path, "max"));
      }
    }
  }
}
