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

/** Printing is planned faster than the axis may move. */
@Rule(
    id = "GW-M025",
    slug = "printing-speed-above-axis",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Printing is planned faster than the axis may move",
    reads = {"printing.speed", "axes.x.maxSpeed", "axes.y.maxSpeed"},
    source = "definition")
public final class PrintingSpeedAboveAxis implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double speed = context.profile().printing().speed();
    for (String name : List.of("x", "y")) {
      Axis axis = context.profile().axes().get(name);
      if (axis != null && known(speed, axis.maxSpeed()) && speed > axis.maxSpeed()) {
        sink.report(
            "axes." + name + ".maxSpeed",
            "found " + n(axis.maxSpeed()) + " mm/s, printing is planned with " + n(speed) + " mm/s",
            Remedy.review(
                "Print at " + n(axis.maxSpeed()) + " mm/s", "printing.speed", axis.maxSpeed()));
      }
    }
  }
}
