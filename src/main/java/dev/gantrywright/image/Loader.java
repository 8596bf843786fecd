package dev.gantrywright.image;

import java.util.Set;

/**
 * What the bootloader keeps for itself and what it takes.
 *
 * @param startBytes bytes at the start of flash that it occupies: the offset of the program
 * @param endBytes bytes at the end of flash that it occupies (AVR boot section)
 * @param takes file formats that it reads; empty where unknown
 */
public record Loader(long startBytes, long endBytes, Set<ImageFormat> takes) {
  public Loader {
    takes = Set.copyOf(takes);
    if (startBytes < 0 || endBytes < 0) {
      throw new IllegalArgumentException("a bootloader cannot take less than no bytes");
    }
  }

  /** No bootloader known: the program starts where flash does. */
  public static Loader none() {
    return new Loader(0, 0, Set.of());
  }

  public static Loader offset(long startBytes) {
    return new Loader(startBytes, 0, Set.of());
  }
}
