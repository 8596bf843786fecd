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

/** The travel is much longer than the bed. */
@Rule(
    id = "GW-M023",
    slug = "travel-far-beyond-bed",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The travel is much longer than the bed",
    reads = {"axes.*.travelMin", "axes.*.travelMax", "printing.bedX", "printing.bedY"},
    source =
        "a quarter of the bed and 20 mm more, for parking beside it (common practice, no published source)")
public final class TravelFarBeyondBed implements Check {
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
      if (travel > bed * 1.25 + 20) {
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
                + " mm; "
                + n(bed * 1.25 + 20)
                + " mm are usual at most",
            Remedy.show("push the carriage from stop to stop by hand, supply off, and measure"));
      }
    }
  }
}
