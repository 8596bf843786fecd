package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The baud rate is further off than the data sheet recommends. */
@Rule(
    id = "GW-S017",
    slug = "baud-beyond-recommendation",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "The baud rate is further off than the data sheet recommends",
    reads = {
      "serial.baud",
      "serial.port",
      "serial.nativeUsb",
      "serial.dataBits",
      "serial.parity",
      "board.mcu"
    },
    source =
        "ATmega48A to 328P data sheet DS40002061A tables 20-2 and 20-3, \"Recommended Max Receiver Error\", the same USART")
public final class BaudBeyondRecommendation implements Check {
  @Override
  public void check(Context context, Sink sink) {
    UartRate.of(context)
        .filter(rate -> rate.bears() && !rate.fits())
        .ifPresent(
            rate -> sink.report("serial.baud", rate.evidence(), rate.source(), rate.remedies()));
  }
}
