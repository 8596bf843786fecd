package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** No baud rate is stated for a console on a UART. */
@Rule(
    id = "GW-S015",
    slug = "baud-not-stated",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "No baud rate is stated for a console on a UART",
    reads = {"serial.baud", "serial.nativeUsb"},
    source = "common practice, no published source")
public final class BaudNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.profile().serial().baud() == null
        && Boolean.FALSE.equals(context.profile().serial().nativeUsb())) {
      sink.report(
          "serial.baud",
          "none stated: the rate that the folder happens to hold decides",
          Remedy.review("250000 bit/s", "serial.baud", 250000));
    }
  }
}
