package dev.gantrywright.image;

import java.util.function.Consumer;

/** ELF: do the variables lie in RAM that this part has? */
final class RamCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (!(e.image().details() instanceof ImageDetails.Elf elf) || e.chip().ram().isEmpty()) {
      return;
    }
    for (ElfSection s : elf.sections()) {
      Range range = Range.of(address(e, s), s.size());
      boolean known = e.chip().flash().overlaps(range) || e.ramHolds(range);
      if (s.writable() && !known && ramLike(e, s)) {
        out.accept(
            Remark.error(
                "variables-outside-ram",
                "Variables lie outside the RAM of " + e.chip().part() + ".",
                "section " + s.name() + " takes " + range,
                "Check the build target: the image is for a part with more RAM.",
                "RAM banks: the part's data sheet"));
      }
    }
  }

  /** AVR programs write RAM addresses with an offset that keeps them apart from flash. */
  static long address(Examination e, ElfSection s) {
    return e.chip().core() == Core.AVR && s.address() >= AvrProgram.DATA_SPACE
        ? s.address() - AvrProgram.DATA_SPACE
        : s.address();
  }

  private static boolean ramLike(Examination e, ElfSection s) {
    return e.chip().core() != Core.AVR
        || "RAM".equals(AvrProgram.spaceName(s.address())) && s.address() >= AvrProgram.DATA_SPACE;
  }
}
