package dev.gantrywright.header;

/**
 * A half-open range of byte offsets into the original bytes of one file.
 *
 * @param start offset of the first byte
 * @param end offset after the last byte, never before {@code start}
 */
public record Span(int start, int end) {
  public Span {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("span " + start + ".." + end);
    }
  }

  /** How many bytes the span covers. */
  public int length() {
    return end - start;
  }

  /** Whether the offset lies inside. */
  public boolean contains(int offset) {
    return offset >= start && offset < end;
  }

  /** Whether the two ranges share a byte. */
  public boolean overlaps(Span other) {
    return start < other.end && other.start < end;
  }
}
