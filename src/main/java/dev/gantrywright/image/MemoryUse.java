package dev.gantrywright.image;

import java.util.List;

/**
 * What a program takes, in bytes.
 *
 * @param text code and constants
 * @param data variables that start with a value: stored in flash, copied to RAM
 * @param bss variables that start at zero: RAM only
 */
public record MemoryUse(long text, long data, long bss) {
  /** Counted the way of GNU {@code size} in its Berkeley form. */
  static MemoryUse of(List<ElfSection> sections) {
    long text = 0;
    long data = 0;
    long bss = 0;
    for (ElfSection s : sections) {
      if (s.code() || !s.writable()) {
        text += s.size();
      } else if (s.stored()) {
        data += s.size();
      } else {
        bss += s.size();
      }
    }
    return new MemoryUse(text, data, bss);
  }

  public long flashBytes() {
    return text + data;
  }

  public long ramBytes() {
    return data + bss;
  }
}
