package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The baud rate is met only with the UART at double speed. */
@Rule(
    id = "GW-S006",
    slug = "baud-needs-double-speed",
    level = Level.NOTE,
    family = Family.SERIAL,
    summary = "The baud rate is met only with the UART at double speed",
    reads = {
      "serial.baud",
      "serial.port",
      "serial.nativeUsb",
      "serial.dataBits",
      "serial.parity",
      "board.mcu"
    },
    source = "ATmega640/1280/1281/2560/2561 data sheet, examples of UBRR settings")
public final class BaudNeedsDoubleSpeed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    UartRate.of(context)
        .filter(UartRate::needsDoubleSpeed)
        .ifPresent(rate -> sink.report("serial.baud", rate.evidence()));
  }
}
