package dev.gantrywright.image;

/**
 * A run of addresses.
 *
 * @param start first address
 * @param end one past the last address; never below start
 */
public record Range(long start, long end) {
  public Range {
    if (end < start) {
      throw new IllegalArgumentException("a range cannot end before it starts");
    }
  }

  /** The range of {@code size} bytes from {@code start}. */
  public static Range of(long start, long size) {
    return new Range(start, start + size);
  }

  /** Bytes in the range. */
  public long size() {
    return end - start;
  }

  public boolean contains(long address) {
    return address >= start && address < end;
  }

  public boolean contains(Range other) {
    return other.start >= start && other.end <= end;
  }

  public boolean overlaps(Range other) {
    return start < other.end && other.start < end;
  }

  /** For messages: {@code 0x08000000-0x0807FFFF}, last address included. */
  @Override
  public String toString() {
    return size() == 0 ? Hex.word(start) + " (empty)" : Hex.word(start) + "-" + Hex.word(end - 1);
  }
}
