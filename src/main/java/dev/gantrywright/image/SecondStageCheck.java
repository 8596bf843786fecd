package dev.gantrywright.image;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;

/** RP2040: the boot ROM runs the second stage only where its checksum is right. */
final class SecondStageCheck implements ImageCheck {
  static final int CODE_BYTES = 252;

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (!applies(e)) {
      return;
    }
    long start = e.chip().flash().start();
    Optional<byte[]> code = e.image().contents().bytes(start, CODE_BYTES);
    OptionalLong stored = e.image().contents().word(start + CODE_BYTES);
    if (code.isEmpty() || stored.isEmpty()) {
      out.accept(
          Remark.error(
              "second-stage-missing",
              "The second boot stage is missing.",
              "the first 256 bytes at " + Hex.word(start) + " are not in the image",
              "Link the second stage into the program.",
              "RP2040 data sheet, boot sequence (memory)"));
      return;
    }
    long wanted = Crc32Mpeg2.of(code.get());
    if (wanted != stored.getAsLong()) {
      out.accept(
          Remark.error(
              "second-stage-checksum",
              "The checksum of the second boot stage is wrong: the boot ROM would not run it.",
              "stored " + Hex.word(stored.getAsLong()) + ", computed " + Hex.word(wanted),
              "Build again with the second stage's checksum step.",
              "RP2040 boot ROM: CRC-32 over 252 bytes, stored at 0xFC"));
    }
  }

  /** Behind a bootloader of one's own the second stage is not part of the image. */
  static boolean applies(Examination e) {
    return e.chip().part().toUpperCase(Locale.ROOT).startsWith("RP2040")
        && e.loader().startBytes() == 0
        && !e.inFlash().isEmpty();
  }
}
