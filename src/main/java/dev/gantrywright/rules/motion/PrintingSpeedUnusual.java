package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The usual printing speed is unusually low. */
@Rule(
    id = "GW-M037",
    slug = "printing-speed-unusual",
    level = Level.NOTE,
    family = Family.MOTION,
    summary = "The usual printing speed is unusually low",
    reads = {"printing.speed"},
    source = "20 to 300 mm/s (common practice, no published source)")
public final class PrintingSpeedUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double speed = context.profile().printing().speed();
    if (speed != null && speed < 15) {
      sink.report("printing.speed", "found " + n(speed) + " mm/s; 20 to 300 mm/s are usual");
    }
  }
}
