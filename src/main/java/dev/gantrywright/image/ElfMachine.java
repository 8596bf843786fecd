package dev.gantrywright.image;

import java.util.Locale;

/**
 * The machine number of an ELF header.
 *
 * @param number as registered; source: System V gABI, machine registry (glibc elf.h)
 */
public record ElfMachine(int number) {
  public static final int ARM = 40;
  public static final int AVR = 83;
  public static final int XTENSA = 94;
  public static final int RISC_V = 243;

  /** The name in words. */
  public String words() {
    return switch (number) {
      case ARM -> "ARM";
      case AVR -> "AVR";
      case XTENSA -> "Xtensa";
      case RISC_V -> "RISC-V";
      case 3 -> "Intel 80386";
      case 62 -> "x86-64";
      default -> String.format(Locale.ROOT, "machine %d", number);
    };
  }
}
