package dev.gantrywright.rules.serial;

import dev.gantrywright.machine.Parity;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The frame is not eight data bits without parity. */
@Rule(
    id = "GW-S011",
    slug = "frame-not-eight-none",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.SAFE,
    summary = "The frame is not eight data bits without parity",
    reads = {"serial.dataBits", "serial.parity", "serial.nativeUsb"},
    source = "common practice, no published source")
public final class FrameNotEightNone implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer bits = context.profile().serial().dataBits();
    Parity parity = context.profile().serial().parity();
    if (Boolean.TRUE.equals(context.profile().serial().nativeUsb())) {
      return;
    }
    if (bits != null && bits != 8) {
      sink.report(
          "serial.dataBits",
          "found "
              + bits
              + " data bits"
              + (bits < 8 ? ": bytes above " + ((1 << bits) - 1) + " do not fit" : ""),
          Remedy.safe("Eight data bits", "serial.dataBits", 8));
    }
    if (parity != null && parity != Parity.NONE) {
      sink.report(
          "serial.parity",
          "found "
              + parity.word()
              + " parity: a console without it takes the parity bit for a stop bit",
          Remedy.safe("No parity", "serial.parity", "none"));
    }
  }
}
