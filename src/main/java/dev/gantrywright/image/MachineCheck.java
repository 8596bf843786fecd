package dev.gantrywright.image;

import java.util.function.Consumer;

/** ELF: is the program for this kind of core? */
final class MachineCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (!(e.image().details() instanceof ImageDetails.Elf elf)) {
      return;
    }
    int wanted = e.chip().core().elfMachine();
    if (wanted >= 0 && elf.machine().number() != wanted) {
      out.accept(
          Remark.error(
              "other-machine",
              "The program is for another kind of processor.",
              "the ELF header says "
                  + elf.machine().words()
                  + "; "
                  + e.chip().part()
                  + " is "
                  + new ElfMachine(wanted).words(),
              "Check the build target.",
              "System V gABI, e_machine"));
    }
  }
}
