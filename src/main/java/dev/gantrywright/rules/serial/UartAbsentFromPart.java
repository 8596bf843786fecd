package dev.gantrywright.rules.serial;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The sheet numbers a UART that the microcontroller does not have. */
@Rule(
    id = "GW-S016",
    slug = "uart-absent-from-part",
    level = Level.WARNING,
    family = Family.SERIAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The sheet numbers a UART that the microcontroller does not have",
    reads = {"serial.port", "board.mcu"},
    source = "the part's data sheet, number of UARTs")
public final class UartAbsentFromPart implements Check {
  @Override
  public void check(Context context, Sink sink) {
    BoardPort port = context.port(context.profile().serial().port()).orElse(null);
    if (port == null || port.uart() == null || context.mcu().isEmpty()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    if (port.uart() > highest(mcu)) {
      sink.sourced(
          "serial.port",
          "port "
              + port.index()
              + " is UART "
              + port.uart()
              + " on the sheet; the "
              + mcu.part()
              + " has "
              + mcu.uarts()
              + ", the highest of them "
              + highest(mcu),
          mcu.partSource(),
          Remedy.show("correct the board sheet"));
    }
  }

  /** STM32 parts count from 1, and every STM32F4 has a USART6; the others count from 0. */
  private static int highest(Mcu mcu) {
    if (!mcu.uartKind().equals("stm32")) {
      return mcu.uarts() - 1;
    }
    return mcu.family().equals("STM32F4") ? Math.max(6, mcu.uarts()) : mcu.uarts();
  }
}
