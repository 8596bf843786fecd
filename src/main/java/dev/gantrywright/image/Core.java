package dev.gantrywright.image;

import java.util.Locale;

/** The kinds of processor core that the checks tell apart. */
public enum Core {
  /** Cortex-M0, M0+, M1: ARMv6-M. */
  ARM_V6M(ElfMachine.ARM),
  /** Cortex-M3, M4, M7, M33: ARMv7-M and later. */
  ARM_V7M(ElfMachine.ARM),
  AVR(ElfMachine.AVR),
  XTENSA(ElfMachine.XTENSA),
  RISC_V(ElfMachine.RISC_V),
  OTHER(-1);

  private final int elfMachine;

  Core(int elfMachine) {
    this.elfMachine = elfMachine;
  }

  /** The ELF machine number of its programs, or -1 where unknown. */
  public int elfMachine() {
    return elfMachine;
  }

  public boolean cortexM() {
    return this == ARM_V6M || this == ARM_V7M;
  }

  /** From a core's name as data sheets write it: {@code Cortex-M4F}, {@code AVR}. */
  public static Core named(String name) {
    String n = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9+]", "");
    if (n.contains("cortexm0") || n.contains("cortexm1")) {
      return ARM_V6M;
    }
    if (n.contains("cortexm")) {
      return ARM_V7M;
    }
    if (n.contains("avr")) {
      return AVR;
    }
    if (n.contains("xtensa")) {
      return XTENSA;
    }
    return n.contains("riscv") ? RISC_V : OTHER;
  }
}
