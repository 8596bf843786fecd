package dev.gantrywright.image;

import java.util.OptionalLong;
import java.util.function.Consumer;

/** AVR: does the program start with jumps into itself, and leave the boot section alone? */
final class AvrCheck implements ImageCheck {
  private static final String SOURCE = "AVR data sheets, interrupt vectors and boot section";

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (e.chip().core() != Core.AVR || e.inFlash().isEmpty()) {
      return;
    }
    long start = e.programStart();
    long flash = e.chip().flash().size();
    OptionalLong reset = AvrProgram.jumpTarget(e.image().contents(), start, flash);
    if (reset.isEmpty()) {
      out.accept(
          Remark.error(
              "avr-no-reset-jump",
              "There is no jump at the reset vector.",
              e.image().contents().half(start).isPresent()
                  ? "the first word is " + Hex.word(e.image().contents().half(start).getAsInt())
                  : "nothing at " + Hex.word(start),
              "This is no AVR program for this place; check the build target.",
              SOURCE));
    } else if (!e.inImage(reset.getAsLong())) {
      out.accept(
          Remark.error(
              "avr-reset-outside",
              "The reset vector jumps outside the image.",
              "it leads to "
                  + Hex.word(reset.getAsLong())
                  + "; the image covers "
                  + e.inFlash().span(),
              "The image is cut off or linked for another address; build again.",
              SOURCE));
    } else {
      otherVectors(e, out);
    }
    bootSection(e, out);
  }

  /** Follows the table while jumps stand there; each must lead into the image. */
  private static void otherVectors(Examination e, Consumer<Remark> out) {
    long flash = e.chip().flash().size();
    int step = flash > 8192 ? 4 : 2;
    for (int n = 1; n < 80; n++) {
      long at = e.programStart() + (long) n * step;
      OptionalLong target = AvrProgram.jumpTarget(e.image().contents(), at, flash);
      if (target.isEmpty()) {
        return;
      }
      if (!e.inImage(target.getAsLong())) {
        out.accept(
            Remark.error(
                "avr-vector-outside",
                "An interrupt vector jumps outside the image.",
                "vector " + n + " leads to " + Hex.word(target.getAsLong()),
                "The image is cut off, or built for another part; build again.",
                SOURCE));
        return;
      }
    }
  }

  private static void bootSection(Examination e, Consumer<Remark> out) {
    OptionalLong largest = AvrBootSections.largest(e.chip().part());
    if (largest.isEmpty() || e.loader().endBytes() > 0) {
      return;
    }
    long begins = e.chip().flash().end() - largest.getAsLong();
    long end = e.inFlash().span().end();
    if (end > begins && end <= e.chip().flash().end()) {
      out.accept(
          Remark.warning(
              "avr-in-boot-section",
              "The image reaches into flash where a bootloader may sit.",
              "it ends at "
                  + Hex.word(end - 1)
                  + "; the largest boot section begins at "
                  + Hex.word(begins),
              "Enter the bootloader's size in the board sheet, so that the room is known.",
              SOURCE));
    }
  }
}
