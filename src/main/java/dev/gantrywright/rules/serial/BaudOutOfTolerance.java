package dev.gantrywright.rules.serial;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.List;

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
        "the part's manual, baud generator; AVR data sheets, \"Recommended Maximum Receiver Baud Rate Error\"; elsewhere 2 % (common practice, no published source)")
public final class BaudOutOfTolerance implements Check {
  @Override
  public void check(Context context, Sink sink) {
    UartRate.of(context)
        .filter(rate -> !rate.fits())
        .ifPresent(
            rate -> {
              List<Remedy> remedies = new ArrayList<>();
              for (long better : rate.neighbours()) {
                remedies.add(
                    Remedy.review(
                        n(better) + " bit/s, out by " + Shown.percent(rate.errorAt(better)),
                        "serial.baud",
                        (int) better));
              }
              if (remedies.isEmpty()) {
                remedies.add(Remedy.show("choose a rate that the clock divides to"));
              }
              sink.report("serial.baud", rate.evidence(), rate.source(), remedies);
            });
  }
}
