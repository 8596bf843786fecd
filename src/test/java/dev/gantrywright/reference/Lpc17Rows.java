package dev.gantrywright.reference;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.physics.Lpc17Uart;

/** Group 2: LPC175x/6x. */
final class Lpc17Rows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  Lpc17Rows() {
    super("G02_lpc17xx");
    formula("lpc_baud", Lpc17Uart.class, Lpc17Rows::baud);
    formula("lpc_err", Lpc17Uart.class, row -> (baud(row) / row.number("baud") - 1) * 100);
    formula(
        "lpc_legal",
        Lpc17Uart.class,
        row -> Lpc17Uart.legal(row.whole("dl"), row.whole("divadd"), row.whole("mul")) ? 1 : 0);
  }

  private static double baud(HandbookRow row) {
    return Lpc17Uart.baud(
        (long) row.number("pclk"), row.whole("dl"), row.whole("divadd"), row.whole("mul"));
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.has("chip")) {
      Mcu mcu = CATALOG.mcu(row.text("chip")).orElseThrow();
      long bytes = row.quantity().endsWith("flash") ? mcu.flashBytes() : mcu.ramBytes();
      return Use.number(bytes / 1024.0, Catalog.class);
    }
    Mcu big = CATALOG.mcu("LPC1768").orElseThrow();
    return switch (row.quantity()) {
      case "local SRAM base" -> Use.number(big.ram().get(0).base(), Catalog.class);
      case "AHB SRAM bank 0 base" -> Use.number(big.ram().get(1).base(), Catalog.class);
      case "AHB SRAM bank 1 base" -> Use.number(big.ram().get(2).base(), Catalog.class);
      case "largest CPU clock LPC1768" -> Use.number(big.clockHz() / 1e6, Catalog.class);
      default ->
          row.quantity().startsWith("top of local SRAM")
              ? Use.number(big.ram().get(0).end(), Catalog.class)
              : Use.none("the catalogue keeps no such fact");
    };
  }
}
