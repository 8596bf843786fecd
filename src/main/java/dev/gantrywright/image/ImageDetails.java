package dev.gantrywright.image;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What only some formats know. */
public sealed interface ImageDetails {
  /** Nothing beyond bytes and addresses: raw binary, Intel HEX, S-record. */
  record None() implements ImageDetails {}

  /**
   * From an ELF file.
   *
   * @param machine the machine number of the header
   * @param sections every section that takes memory, in file order
   * @param use what the program takes, as {@code size} counts it
   */
  record Elf(ElfMachine machine, List<ElfSection> sections, MemoryUse use) implements ImageDetails {
    public Elf {
      sections = List.copyOf(sections);
    }
  }

  /**
   * From a UF2 file.
   *
   * @param blocks blocks in the file
   * @param families contents by family; key 0 for blocks that name none
   * @param skipped blocks that do not go to the main flash
   * @param device what the file says it is for (extension tag), where it does
   * @param version the firmware's version (extension tag), where it is given
   */
  record Uf2(
      int blocks,
      Map<Long, Contents> families,
      int skipped,
      Optional<String> device,
      Optional<String> version)
      implements ImageDetails {
    public Uf2 {
      families = Map.copyOf(families);
    }
  }

  static ImageDetails none() {
    return new None();
  }
}
