package dev.gantrywright.image;

import java.util.OptionalLong;
import java.util.function.Consumer;

/** Cortex-M: does the initial stack pointer lie in this part's RAM, aligned? */
final class StackCheck implements ImageCheck {
  private static final String SOURCE =
      "ARMv7-M architecture: word 0 is the initial main stack pointer; banks: "
          + "the part's data sheet";

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (!e.chip().core().cortexM()) {
      return;
    }
    OptionalLong word = e.vector(0);
    if (word.isEmpty() || e.inFlash().isEmpty()) {
      return;
    }
    long stack = word.getAsLong();
    if ((stack & 3) != 0) {
      out.accept(
          Remark.error(
              "stack-misaligned",
              "The initial stack pointer is not on a word.",
              "vector 0 is " + Hex.word(stack),
              "This is no Cortex-M image for this place; check build target and offset.",
              SOURCE));
      return;
    }
    if (e.chip().ram().stream().noneMatch(b -> VectorTable.stackFits(stack, b.range()))) {
      out.accept(
          Remark.error(
              "stack-outside-ram",
              "The initial stack pointer lies outside the RAM of " + e.chip().part() + ".",
              "vector 0 is " + Hex.word(stack) + "; RAM is " + banks(e),
              "Check the build target: the image is for a part with other RAM.",
              SOURCE));
    } else if ((stack & 7) != 0) {
      out.accept(
          Remark.warning(
              "stack-not-eight",
              "The initial stack pointer is not a multiple of 8.",
              "vector 0 is " + Hex.word(stack),
              "The procedure call standard asks for 8; look at the linker script.",
              "AAPCS, stack constraints at a public interface (memory)"));
    }
  }

  private static String banks(Examination e) {
    return e.chip().ram().stream()
        .map(b -> b.range().toString())
        .reduce((a, b) -> a + ", " + b)
        .orElse("not known");
  }
}
