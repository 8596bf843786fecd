package dev.gantrywright.image;

import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * What the checks need to know of AVR programs.
 *
 * <p>Source: AVR Instruction Set Manual, JMP and RJMP (memory), checked against avr-objdump; data
 * spaces: avr-libc linker scripts.
 */
final class AvrProgram {
  static final long DATA_SPACE = 0x800000L;
  private static final long EEPROM_SPACE = 0x810000L;
  private static final long FUSE_SPACE = 0x820000L;

  private AvrProgram() {}

  /** The byte address that the jump at {@code at} leads to, where a jump stands there. */
  static OptionalLong jumpTarget(Contents c, long at, long flashBytes) {
    OptionalInt first = c.half(at);
    if (first.isEmpty()) {
      return OptionalLong.empty();
    }
    int op = first.getAsInt();
    if ((op & 0xFE0E) == 0x940C && c.half(at + 2).isPresent()) {
      long high = (op >> 3 & 0x3E) | (op & 1);
      return OptionalLong.of((high << 16 | c.half(at + 2).getAsInt()) * 2L);
    }
    if ((op & 0xF000) == 0xC000) {
      int words = (op & 0x0FFF) << 20 >> 20;
      // A relative jump wraps around the end of small flash memories.
      return OptionalLong.of(Math.floorMod(at + 2 + 2L * words, flashBytes));
    }
    return OptionalLong.empty();
  }

  /** The name of the memory behind an address above the flash. */
  static String spaceName(long address) {
    if (address < EEPROM_SPACE) {
      return "RAM";
    }
    return address < FUSE_SPACE ? "EEPROM" : "fuse or lock";
  }
}
