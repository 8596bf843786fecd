package dev.gantrywright.reference;

import dev.gantrywright.link.remote.ComPortCodes;
import dev.gantrywright.physics.ReceiverWindow;
import dev.gantrywright.physics.SerialTiming;
import dev.gantrywright.physics.Stm32Uart;
import java.util.OptionalInt;

/** Group 10: serial lines. */
final class SerialRows extends GroupRows {
  SerialRows() {
    super("G10_serial");
    formula(
        "byte_us",
        SerialTiming.class,
        row -> SerialTiming.byteSeconds(row.number("baud"), row.whole("bits")) * 1e6);
    formula(
        "bytes_s",
        SerialTiming.class,
        row -> SerialTiming.bytesPerSecond(row.number("baud"), row.whole("bits")));
    formula(
        "frame_bits",
        SerialTiming.class,
        row -> SerialTiming.frameBits(row.whole("data"), row.whole("parity"), row.whole("stop")));
    formula(
        "xfer_s",
        SerialTiming.class,
        row ->
            SerialTiming.transferSeconds(
                (long) row.number("nbytes"), row.number("baud"), row.whole("bits")));
    formula(
        "uart_mid_tol",
        ReceiverWindow.class,
        row -> ReceiverWindow.idealMismatchPercent(row.whole("bits")));
    lookUp("local_rfc2217", SerialRows::comPortCode);
    formula(
        "rfc2217_server", ComPortCodes.owner(), row -> ComPortCodes.fromServer(row.whole("cmd")));
  }

  private static Use comPortCode(HandbookRow row) {
    OptionalInt code = ComPortCodes.code(row.text("name"));
    return code.isPresent()
        ? Use.number(code.getAsInt(), ComPortCodes.owner())
        : Use.none("the program does not send this code itself");
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.quantity().startsWith("STM32 receiver tolerance")) {
      boolean over8 = row.quantity().contains("OVER8=1");
      return Use.number(Stm32Uart.tolerancePercent(over8, false), Stm32Uart.class);
    }
    return Use.none("no part of the program uses this fact");
  }
}
