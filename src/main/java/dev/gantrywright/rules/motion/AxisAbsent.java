package dev.gantrywright.rules.motion;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** The kinematics need an axis that the profile does not have. */
@Rule(
    id = "GW-M018",
    slug = "axis-absent",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The kinematics need an axis that the profile does not have",
    reads = {"kinematics", "axes.**"},
    source = "definition of the kinematics")
public final class AxisAbsent implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.profile().kinematics() == null || context.profile().axes().isEmpty()) {
      return;
    }
    for (String name : List.of("x", "y", "z")) {
      if (!context.profile().axes().containsKey(name)) {
        sink.report(
            "axes." + name,
            context.profile().kinematics().word()
                + " needs x, y and z; found "
                + String.join(", ", context.profile().axes().keySet()),
            Remedy.show("describe the axis"));
      }
    }
  }
}
