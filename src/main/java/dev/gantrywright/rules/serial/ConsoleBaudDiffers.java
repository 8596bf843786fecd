package dev.gantrywright.rules.serial;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Console and firmware use different baud rates. */
@Rule(
    id = "GW-S007",
    slug = "console-baud-differs",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.REVIEW,
    summary = "Console and firmware use different baud rates",
    reads = {"serial.baud", "serial.nativeUsb", "link.baud"},
    source = "definition: both ends of an asynchronous line keep the same time")
public final class ConsoleBaudDiffers implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Integer firmware = context.profile().serial().baud();
    Integer console = context.profile().link().baud();
    if (known(firmware, console)
        && !firmware.equals(console)
        && !Boolean.TRUE.equals(context.profile().serial().nativeUsb())) {
      sink.report(
          "link.baud",
          "the console opens the port with "
              + console
              + " bit/s, the firmware answers with "
              + firmware
              + " bit/s",
          Remedy.review("Open the port with " + firmware + " bit/s", "link.baud", firmware),
          Remedy.review("Let the firmware use " + console + " bit/s", "serial.baud", console));
    }
  }
}
