package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.physics.StepsPerMm;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The Z axis is too coarse for the layer height. */
@Rule(
    id = "GW-M003",
    slug = "layer-finer-than-steps",
    level = Level.WARNING,
    family = Family.MOTION,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The Z axis is too coarse for the layer height",
    reads = {"printing.layerHeight", "axes.z.stepsPerMm"},
    source = "an eighth of a layer (common practice, no published source)")
public final class LayerFinerThanSteps implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double layer = context.profile().printing().layerHeight();
    Axis z = context.profile().axes().get("z");
    if (!known(layer, z) || !known(z.stepsPerMm())) {
      return;
    }
    double step = StepsPerMm.resolutionMm(z.stepsPerMm());
    if (step > layer / 8) {
      sink.report(
          "axes.z.stepsPerMm",
          "one step is "
              + about(step)
              + " mm, a layer "
              + n(layer)
              + " mm: "
              + about(layer / step)
              + " steps a layer, at least 8 are usual",
          Remedy.show("use more microsteps, a finer screw or thicker layers"));
    }
  }
}
