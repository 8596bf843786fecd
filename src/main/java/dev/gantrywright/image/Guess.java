package dev.gantrywright.image;

import java.util.OptionalLong;

/** What an image looks like from its first words, for when nobody says what it is for. */
final class Guess {
  /** Source: handbook of the ESP32's boot ROM: an image begins with 0xE9. */
  private static final int ESP_MAGIC = 0xE9;

  private Guess() {}

  static String of(Image image) {
    if (image.details() instanceof ImageDetails.Elf elf) {
      return "a program for " + elf.machine().words();
    }
    if (image.details() instanceof ImageDetails.Uf2 uf2
        && Uf2Families.name(uf2.families().keySet().iterator().next()).isPresent()) {
      return "a program for " + Uf2Families.name(uf2.families().keySet().iterator().next()).get();
    }
    long start = image.contents().span().start();
    OptionalLong stack = image.contents().word(start);
    OptionalLong reset = image.contents().word(start + 4);
    if (stack.isPresent() && reset.isPresent() && cortexM(stack.getAsLong(), reset.getAsLong())) {
      return "a Cortex-M program: stack "
          + Hex.word(stack.getAsLong())
          + ", reset "
          + Hex.word(reset.getAsLong());
    }
    if (AvrProgram.jumpTarget(image.contents(), start, 1 << 18).isPresent()
        && AvrProgram.jumpTarget(image.contents(), start + 4, 1 << 18).isPresent()) {
      return "an AVR program: jumps stand at its first vectors";
    }
    if (image.contents().byteAt(start).orElse(0) == ESP_MAGIC) {
      return "an ESP32 image: it begins with 0xE9";
    }
    return "nothing known from its first words";
  }

  /** A stack in a RAM region of the Cortex-M map, and an odd handler in the code region. */
  private static boolean cortexM(long stack, long reset) {
    boolean ram = stack >= 0x10000000L && stack < 0x40000000L && stack % 4 == 0;
    return ram && VectorTable.thumb(reset) && reset < 0x20000000L;
  }
}
