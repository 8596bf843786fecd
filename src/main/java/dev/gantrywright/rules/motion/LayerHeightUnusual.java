package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Hardly any nozzle prints layers of this height. */
@Rule(
    id = "GW-M036",
    slug = "layer-height-unusual",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "Hardly any nozzle prints layers of this height",
    reads = {"printing.layerHeight"},
    source =
        "a quarter to three quarters of nozzles of 0.2 to 0.8 mm (common practice, no published source)")
public final class LayerHeightUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double layer = context.profile().printing().layerHeight();
    if (layer != null && (layer < 0.04 || layer > 0.8)) {
      sink.report("printing.layerHeight", "found " + n(layer) + " mm; 0.05 to 0.6 mm are usual");
    }
  }
}
