package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The travel of Z is out of proportion to the bed. */
@Rule(
    id = "GW-M035",
    slug = "height-unlike-bed",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "The travel of Z is out of proportion to the bed",
    reads = {"axes.z.travelMin", "axes.z.travelMax", "printing.bedX", "printing.bedY"},
    source = "a third to twice the bed's shorter side (common practice, no published source)")
public final class HeightUnlikeBed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Axis z = context.profile().axes().get("z");
    Double x = context.profile().printing().bedX();
    Double y = context.profile().printing().bedY();
    if (!known(z, x, y) || !known(z.travelMin(), z.travelMax())) {
      return;
    }
    double height = z.travelMax() - z.travelMin();
    double side = Math.min(x, y);
    if (height > 0 && (height < side / 4 || height > side * 3)) {
      sink.report(
          "axes.z.travelMax",
          "found "
              + n(z.travelMin())
              + " to "
              + n(z.travelMax())
              + " mm: "
              + n(height)
              + " mm over a bed of "
              + n(x)
              + " x "
              + n(y)
              + " mm; "
              + about(side / 3)
              + " to "
              + n(side * 2)
              + " mm are usual");
    }
  }
}
