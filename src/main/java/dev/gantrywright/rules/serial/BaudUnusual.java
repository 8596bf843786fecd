package dev.gantrywright.rules.serial;

import dev.gantrywright.physics.UartKind;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.stream.Collectors;

/** Few consoles offer this baud rate. */
@Rule(
    id = "GW-S013",
    slug = "baud-unusual",
    level = Level.NOTE,
    family = Family.SERIAL,
    summary = "Few consoles offer this baud rate",
    reads = {"serial.baud", "serial.nativeUsb"},
    source = "common practice, no published source")
public final class BaudUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer baud = context.profile().serial().baud();
    if (baud != null
        && !Boolean.TRUE.equals(context.profile().serial().nativeUsb())
        && !UartKind.USUAL_BAUDS.contains(baud.longValue())) {
      sink.report(
          "serial.baud",
          "found "
              + baud
              + " bit/s; usual are "
              + UartKind.USUAL_BAUDS.stream()
                  .map(String::valueOf)
                  .collect(Collectors.joining(", ")));
    }
  }
}
