package dev.gantrywright.image;

import java.util.Locale;
import java.util.OptionalLong;
import java.util.function.Consumer;

/** LPC17xx: the boot ROM starts the program only where words 0 to 7 add up to zero. */
final class LpcChecksumCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    String family = e.chip().family().toLowerCase(Locale.ROOT);
    String part = e.chip().part().toLowerCase(Locale.ROOT);
    if (!family.startsWith("lpc17") && !part.startsWith("lpc17")) {
      return;
    }
    // Behind a bootloader the ROM looks at the bootloader's own vectors instead.
    OptionalLong sum = sum(e);
    if (e.loader().startBytes() != 0 || sum.isEmpty() || sum.getAsLong() == 0) {
      return;
    }
    long wanted = (e.vector(7).orElse(0) - sum.getAsLong()) & 0xFFFFFFFFL;
    out.accept(
        Remark.error(
            "lpc-checksum",
            "The valid-user-code word is wrong: the boot ROM would not start this program.",
            "word 7 is " + Hex.word(e.vector(7).orElse(0)) + "; it must be " + Hex.word(wanted),
            "Let the build write it, or load with a tool that does, and say so as the reason.",
            "NXP UM10360, flash memory chapter: criterion for valid user code"));
  }

  /** The sum of words 0 to 7, 32 bits wide. */
  private static OptionalLong sum(Examination e) {
    long sum = 0;
    for (int i = 0; i < 8; i++) {
      OptionalLong word = e.vector(i);
      if (word.isEmpty()) {
        return OptionalLong.empty();
      }
      sum += word.getAsLong();
    }
    return OptionalLong.of(sum & 0xFFFFFFFFL);
  }
}
