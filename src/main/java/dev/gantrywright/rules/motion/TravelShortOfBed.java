package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** The travel does not reach the whole bed. */
@Rule(
    id = "GW-M008",
    slug = "travel-short-of-bed",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The travel does not reach the whole bed",
    reads = {"axes.*.travelMin", "axes.*.travelMax", "printing.bedX", "printing.bedY"},
    source = "definition")
public final class TravelShortOfBed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    for (String name : List.of("x", "y")) {
      Axis axis = context.profile().axes().get(name);
      Double bed =
          name.equals("x")
              ? context.profile().printing().bedX()
              : context.profile().printing().bedY();
      if (axis == null || !known(bed, axis.travelMin(), axis.travelMax())) {
        continue;
      }
      double travel = axis.travelMax() - axis.travelMin();
      if (travel > 0 && travel < bed - 0.5) {
        sink.report(
            "axes." + name + ".travelMax",
            "found "
                + n(axis.travelMin())
                + " to "
                + n(axis.travelMax())
                + " mm: "
                + n(travel)
                + " mm over a bed of "
                + n(bed)
                + " mm",
            Remedy.show("push the carriage from stop to stop by hand, supply off, and measure"));
      }
    }
  }
}
