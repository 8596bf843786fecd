package dev.gantrywright.reference;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Chip;
import dev.gantrywright.image.Circumstances;
import dev.gantrywright.image.ImageJudge;
import dev.gantrywright.image.ImageReader;
import dev.gantrywright.image.Loader;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.physics.Lpc17Uart;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Group 2: LPC175x/6x. */
final class Lpc17Rows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  Lpc17Rows() {
    super("G02_lpc17xx");
    formula("lpc_baud", Lpc17Uart.class, Lpc17Rows::baud);
    formula("lpc_err", Lpc17Uart.class, row -> (baud(row) / row.number("baud") - 1) * 100);
    formula("lpc_vec7", ImageJudge.class, Lpc17Rows::validCodeWord);
    formula(
        "lpc_legal",
        Lpc17Uart.class,
        row -> Lpc17Uart.legal(row.whole("dl"), row.whole("divadd"), row.whole("mul")) ? 1 : 0);
  }

  /** What the image check says word 7 must be, when the image has another one there. */
  private static double validCodeWord(HandbookRow row) {
    String[] words = row.text("words").split(" ");
    ByteBuffer image = ByteBuffer.allocate(1024).order(ByteOrder.LITTLE_ENDIAN);
    for (String word : words) {
      image.putInt((int) Long.parseLong(word, 16));
    }
    image.putInt(0x12345678);
    try {
      Verdict verdict =
          ImageJudge.judge(
              ImageReader.read(image.array()),
              Chip.of(CATALOG.mcu("LPC1768").orElseThrow()),
              Loader.none(),
              Circumstances.unknown());
      String evidence =
          verdict.remarks().stream()
              .filter(remark -> remark.id().equals("lpc-checksum"))
              .findFirst()
              .orElseThrow()
              .evidence();
      return Long.decode(evidence.replaceAll(".*must be ", ""));
    } catch (BrokenImage e) {
      throw new IllegalStateException(row.id(), e);
    }
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
