package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Consumer;

/** Cortex-M: do reset and the other vectors carry the Thumb bit and point into the image? */
final class VectorCheck implements ImageCheck {
  private static final String SOURCE =
      "ARMv6-M / ARMv7-M architecture manuals; Arm DUI0471, vector table";
  private static final int[] V6M = {2, 3, 11, 14, 15};
  private static final int[] V7M = {2, 3, 4, 5, 6, 11, 12, 14, 15};

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (!e.chip().core().cortexM() || e.inFlash().isEmpty()) {
      return;
    }
    OptionalLong reset = e.vector(VectorTable.RESET);
    if (e.vector(0).isEmpty() || reset.isEmpty()) {
      out.accept(
          Remark.error(
              "vectors-missing",
              "There is no vector table where the program is started.",
              "nothing at " + Hex.word(e.vectorStart()),
              "Build for the offset that the board sheet gives.",
              SOURCE));
      return;
    }
    reset(e, reset.getAsLong(), out);
    others(e, out);
    int alignment = VectorTable.alignment(e.chip().interrupts().orElse(0));
    if (e.vectorStart() % alignment != 0) {
      out.accept(
          Remark.error(
              "vectors-misaligned",
              "The vector table cannot stand at this offset.",
              Hex.word(e.vectorStart()) + " is not a multiple of " + alignment,
              "Correct the loader offset in the board sheet.",
              SOURCE));
    }
  }

  private static void reset(Examination e, long word, Consumer<Remark> out) {
    String seen = "vector 1 is " + Hex.word(word);
    if (!VectorTable.thumb(word)) {
      out.accept(
          Remark.error(
              "reset-without-thumb-bit",
              "The reset vector is even: the core would fault at once.",
              seen,
              "This is no Cortex-M image for this place; check build target and offset.",
              SOURCE));
    } else if (!e.inImage(word - 1)) {
      out.accept(
          Remark.error(
              "reset-outside-image",
              "The reset vector points outside the image.",
              seen + "; the image covers " + e.image().contents().span(),
              "The image is linked for another address: check the offset on both sides.",
              SOURCE));
    }
  }

  private static boolean leadsIn(Examination e, long word) {
    return VectorTable.thumb(word) && (e.inImage(word - 1) || e.inRam(word - 1));
  }

  private static void others(Examination e, Consumer<Remark> out) {
    List<String> wrong = new ArrayList<>();
    for (int n : e.chip().core() == Core.ARM_V6M ? V6M : V7M) {
      long word = e.vector(n).orElse(0);
      if (word != 0 && !leadsIn(e, word)) {
        wrong.add(n + " is " + Hex.word(word));
      }
    }
    // A table may stop short; the first handler behind it bounds how long it can be.
    int last = VectorTable.SYSTEM_VECTORS + e.chip().interrupts().orElse(0);
    long bound = Long.MAX_VALUE;
    for (int n = VectorTable.RESET; n < last && e.vectorStart() + 4L * n < bound; n++) {
      long word = e.vector(n).orElse(0);
      if (leadsIn(e, word) && e.inImage(word - 1) && word > e.vectorStart()) {
        bound = Math.min(bound, word - 1);
      }
      if (n >= VectorTable.SYSTEM_VECTORS && word != 0 && !leadsIn(e, word)) {
        wrong.add(n + " is " + Hex.word(word));
        break;
      }
    }
    if (!wrong.isEmpty()) {
      out.accept(
          Remark.error(
              "vector-outside-image",
              "Exception vectors point outside the image, or lack the Thumb bit.",
              "vector " + String.join(", ", wrong),
              "Check build target and offset.",
              SOURCE));
    }
    if (e.vector(3).orElse(1) == 0) {
      out.accept(
          Remark.warning(
              "hard-fault-unhandled",
              "There is no hard-fault handler.",
              "vector 3 is 0",
              "A fault then ends in a lock-up with heaters as they were; add a handler.",
              SOURCE));
    }
  }
}
