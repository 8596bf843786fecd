package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The UART cannot make this baud rate closely enough. */
@Rule(
    id = "GW-S005",
    slug = "baud-out-of-tolerance",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "The UART cannot make this baud rate closely enough",
    reads = {
      "serial.baud",
      "serial.port",
      "serial.nativeUsb",
      "serial.dataBits",
      "serial.parity",
      "board.mcu"
    },
    source =
        "the part's manual, baud generator; AVR: ATmega48A to 328P data sheet DS40002061A 20.8.3, range of the receiver, less 1 % for the other end; elsewhere 2 % (common practice, no published source)")
public final class BaudOutOfTolerance implements Check {
  @Override
  public void check(Context context, Sink sink) {
    UartRate.of(context)
        .filter(rate -> !rate.bears())
        .ifPresent(
            rate -> sink.report("serial.baud", rate.evidence(), rate.source(), rate.remedies()));
  }
}
