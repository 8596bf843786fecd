package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.about;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** One step of X or Y is coarser than a print shows. */
@Rule(
    id = "GW-M024",
    slug = "resolution-coarse",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "One step of X or Y is coarser than a print shows",
    reads = {"axes.x.stepsPerMm", "axes.y.stepsPerMm"},
    source = "0.05 mm (common practice, no published source)")
public final class ResolutionCoarse implements Check {
  @Override
  public void check(Context context, Sink sink) {
    for (String name : List.of("x", "y")) {
      Axis axis = context.profile().axes().get(name);
      if (axis != null && axis.stepsPerMm() != null && 1 / axis.stepsPerMm() > 0.05) {
        sink.report(
            "axes." + name + ".stepsPerMm",
            "one step is "
                + about(1 / axis.stepsPerMm())
                + " mm; 0.05 mm is the coarsest that does not show",
            Remedy.show("use more microsteps or a smaller pulley"));
      }
    }
  }
}
