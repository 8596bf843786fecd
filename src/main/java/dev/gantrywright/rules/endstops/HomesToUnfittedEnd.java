package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.HomeEnd;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The axis homes to an end that has no endstop. */
@Rule(
    id = "GW-E007",
    slug = "homes-to-unfitted-end",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.REVIEW,
    summary = "The axis homes to an end that has no endstop",
    reads = {"axes.*.homing.end", "endstops.*.fitted"},
    source = "definition of homing: the axis moves until its endstop is touched")
public final class HomesToUnfittedEnd implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.profile().endstops().isEmpty()) {
      return;
    }
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              HomeEnd end = axis.homing().end();
              if (end == null || fitted(context, name, end)) {
                return;
              }
              HomeEnd other = end == HomeEnd.MIN ? HomeEnd.MAX : HomeEnd.MIN;
              String path = "axes." + name + ".homing.end";
              boolean otherFitted = fitted(context, name, other);
              sink.report(
                  path,
                  "found "
                      + end.word()
                      + "; "
                      + name
                      + " has "
                      + (otherFitted
                          ? "its only endstop at " + other.word()
                          : "no endstop at either end"),
                  otherFitted
                      ? Remedy.review("Home " + name + " to " + other.word(), path, other.word())
                      : Remedy.show("fit an endstop, or state that this axis does not home"));
            });
  }

  private static boolean fitted(Context context, String axis, HomeEnd end) {
    Endstop endstop = context.profile().endstops().get(axis + (end == HomeEnd.MIN ? "Min" : "Max"));
    // Where nothing is said of an endstop that stands in the profile, it may well be fitted.
    return endstop != null && !Boolean.FALSE.equals(endstop.fitted());
  }
}
