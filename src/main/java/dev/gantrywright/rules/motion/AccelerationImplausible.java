package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The acceleration is more than three times that of gravity. */
@Rule(
    id = "GW-M026",
    slug = "acceleration-implausible",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The acceleration is more than three times that of gravity",
    reads = {"axes.*.acceleration"},
    source =
        "30,000 mm/s² is 3.06 g (g = 9,806.65 mm/s², ISO 80000-3); common practice, no published source")
public final class AccelerationImplausible implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.acceleration() != null && axis.acceleration() > 30_000) {
                sink.report(
                    "axes." + name + ".acceleration",
                    "found "
                        + n(axis.acceleration())
                        + " mm/s², "
                        + about(axis.acceleration() / 9806.65)
                        + " g; a carriage of 0.4 kg then needs "
                        + about(axis.acceleration() / 1000 * 0.4)
                        + " N at the belt",
                    Remedy.show("check the decimal point"));
              }
            });
  }
}
