package dev.gantrywright.rules.serial;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Parity;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The line carries too few segments a second for the printing speed. */
@Rule(
    id = "GW-S012",
    slug = "line-slower-than-segments",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "The line carries too few segments a second for the printing speed",
    reads = {
      "serial.baud",
      "serial.dataBits",
      "serial.parity",
      "serial.nativeUsb",
      "printing.speed"
    },
    source =
        "a frame of start, data, parity and stop bits (definition); 40 bytes a segment and 1 mm as the coarsest usual segment (common practice, no published source)")
public final class LineSlowerThanSegments implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer baud = context.profile().serial().baud();
    Double speed = context.profile().printing().speed();
    if (!known(baud, speed) || Boolean.TRUE.equals(context.profile().serial().nativeUsb())) {
      return;
    }
    Integer data = context.profile().serial().dataBits();
    Parity parity = context.profile().serial().parity();
    int frame = 2 + (data == null ? 8 : data) + (parity == null || parity == Parity.NONE ? 0 : 1);
    double segments = baud / (double) frame / 40;
    double shortest = speed / segments;
    if (shortest > 1) {
      sink.report(
          "serial.baud",
          n(baud.longValue())
              + " bit/s carry "
              + about(segments)
              + " segments of 40 bytes a second; at "
              + n(speed)
              + " mm/s each must be at least "
              + about(shortest)
              + " mm long",
          Remedy.review("250000 bit/s", "serial.baud", 250000));
    }
  }
}
