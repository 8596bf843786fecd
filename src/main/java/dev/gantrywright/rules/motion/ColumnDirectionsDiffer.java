package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;
import java.util.Map;

/** One column turns the other way. */
@Rule(
    id = "GW-M012",
    slug = "column-directions-differ",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "One column turns the other way",
    reads = {"kinematics", "axes.*.directionInverted"},
    source = "common practice, no published source: three equal carriages wired alike")
public final class ColumnDirectionsDiffer implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, Axis> axes = context.profile().axes();
    if (context.profile().kinematics() != Kinematics.DELTA
        || !known(axes.get("x"), axes.get("y"), axes.get("z"))) {
      return;
    }
    Boolean first = axes.get("x").directionInverted();
    for (String name : List.of("y", "z")) {
      Boolean other = axes.get(name).directionInverted();
      if (known(first, other) && !first.equals(other)) {
        sink.report(
            "axes." + name + ".directionInverted",
            "found " + other + ", x has " + first,
            Remedy.show("move one column up by 1 mm at a time and watch, hand on the stop key"));
      }
    }
  }
}
