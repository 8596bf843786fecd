package dev.gantrywright.rules.motion;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** An axis homes, but its homing speed is not stated. */
@Rule(
    id = "GW-M022",
    slug = "homing-speed-not-stated",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "An axis homes, but its homing speed is not stated",
    reads = {"axes.*.homing.end", "axes.*.homing.speed"},
    source = "definition of homing")
public final class HomingSpeedNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.homing().end() != null && axis.homing().speed() == null) {
                sink.report(
                    "axes." + name + ".homing.speed",
                    "none stated: the folder's own default decides how hard the axis meets its endstop",
                    Remedy.show("state a speed from which the axis can stop within 1 mm"));
              }
            });
  }
}
