package dev.gantrywright.reference;

import dev.gantrywright.physics.AvrUart;
import dev.gantrywright.physics.BaudSetting;
import dev.gantrywright.physics.ReceiverWindow;

/** Group 1: the AVR USART. */
final class AvrBaudRows extends GroupRows {
  AvrBaudRows() {
    super("G01_avr_baud");
    formula("avr_ubrr", AvrUart.class, row -> setting(row).divisor());
    formula("avr_err", AvrUart.class, row -> setting(row).errorPercent());
    formula(
        "avr_baud",
        AvrUart.class,
        row -> AvrUart.baud((long) row.number("f"), row.whole("ubrr"), row.flag("u2x")));
    formula("avr_rslow", ReceiverWindow.class, row -> 100 * window(row).slowRatio());
    formula("avr_rfast", ReceiverWindow.class, row -> 100 * window(row).fastRatio());
    formula("avr_err_slow", ReceiverWindow.class, row -> window(row).slowPercent());
  }

  private static BaudSetting setting(HandbookRow row) {
    return AvrUart.setting((long) row.number("f"), (long) row.number("baud"), row.flag("u2x"));
  }

  private static ReceiverWindow window(HandbookRow row) {
    return AvrUart.window(row.whole("d"), row.flag("u2x"));
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.has("d")) {
      return Use.number(
          AvrUart.recommendedErrorPercent(row.whole("d"), row.flag("u2x")), AvrUart.class);
    }
    return Use.none("what another tool's header says, not a fact of the part");
  }
}
