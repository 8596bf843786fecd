package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Layers end between two full steps of the screw's motor. */
@Rule(
    id = "GW-M002",
    slug = "layer-between-full-steps",
    level = Level.NOTE,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Layers end between two full steps of the screw's motor",
    reads = {"printing.layerHeight", "axes.z.motor.fullSteps", "axes.z.drive.**"},
    source =
        "a motor at rest is most exact at full steps: step angle accuracy of ± 5 % of a full step in makers' sheets (memory)")
public final class LayerBetweenFullSteps implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double layer = context.profile().printing().layerHeight();
    Axis z = context.profile().axes().get("z");
    if (!known(layer, z)
        || z.drive().kind() != DriveKind.SCREW
        || !known(z.drive().lead(), z.motor().fullSteps())) {
      return;
    }
    double ratio = z.drive().ratio() == null ? 1 : z.drive().ratio();
    double step = z.drive().lead() / z.motor().fullSteps() / ratio;
    double steps = layer / step;
    if (steps >= 0.5 && Math.abs(steps - Math.rint(steps)) > 0.01) {
      double better = Double.parseDouble(n(Math.max(1, Math.rint(steps)) * step));
      sink.report(
          "printing.layerHeight",
          "found " + n(layer) + " mm, " + n(steps) + " full steps of " + n(step) + " mm",
          Remedy.review("Print layers of " + n(better) + " mm", "printing.layerHeight", better));
    }
  }
}
