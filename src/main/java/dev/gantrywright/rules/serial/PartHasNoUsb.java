package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Native USB is stated, but the microcontroller has none. */
@Rule(
    id = "GW-S004",
    slug = "part-has-no-usb",
    level = Level.ERROR,
    family = Family.SERIAL,
    fix = Rule.Fix.SAFE,
    summary = "Native USB is stated, but the microcontroller has none",
    reads = {"serial.nativeUsb", "board.mcu"},
    source = "the part's data sheet, peripherals")
public final class PartHasNoUsb implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (Boolean.TRUE.equals(context.profile().serial().nativeUsb())
        && context.mcu().isPresent()
        && !context.mcu().get().nativeUsb()) {
      sink.sourced(
          "serial.nativeUsb",
          "found native USB; the "
              + context.mcu().get().part()
              + " has "
              + context.mcu().get().uarts()
              + " UARTs and no USB of its own",
          context.mcu().get().partSource(),
          Remedy.safe("The console runs over a UART", "serial.nativeUsb", false));
    }
  }
}
