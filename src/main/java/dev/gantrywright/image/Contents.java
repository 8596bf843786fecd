package dev.gantrywright.image;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * What an image puts into memory: segments sorted by address, apart from each other. Words are
 * little endian, as on every controller that the catalogue knows.
 */
public final class Contents {
  private final List<Segment> segments;

  Contents(List<Segment> segments) {
    this.segments = List.copyOf(segments);
  }

  public List<Segment> segments() {
    return segments;
  }

  public boolean isEmpty() {
    return segments.isEmpty();
  }

  /** Bytes given by the image; gaps between segments do not count. */
  public long byteCount() {
    return segments.stream().mapToLong(Segment::length).sum();
  }

  /** From the lowest to the highest byte, gaps included; empty contents span nothing at 0. */
  public Range span() {
    return isEmpty()
        ? new Range(0, 0)
        : new Range(segments.get(0).address(), segments.get(segments.size() - 1).range().end());
  }

  /** The byte at an address, where the image gives one. */
  public OptionalInt byteAt(long address) {
    Segment s = holding(address);
    return s == null ? OptionalInt.empty() : OptionalInt.of(s.at((int) (address - s.address())));
  }

  /** The little-endian 16-bit word at an address, where the image gives both bytes. */
  public OptionalInt half(long address) {
    OptionalInt low = byteAt(address);
    OptionalInt high = byteAt(address + 1);
    return low.isPresent() && high.isPresent()
        ? OptionalInt.of(low.getAsInt() | high.getAsInt() << 8)
        : OptionalInt.empty();
  }

  /** The little-endian 32-bit word at an address, unsigned, where the image gives all of it. */
  public OptionalLong word(long address) {
    OptionalInt low = half(address);
    OptionalInt high = half(address + 2);
    return low.isPresent() && high.isPresent()
        ? OptionalLong.of(low.getAsInt() | (long) high.getAsInt() << 16)
        : OptionalLong.empty();
  }

  /** {@code count} bytes from an address, where the image gives all of them without a gap. */
  public Optional<byte[]> bytes(long address, int count) {
    Segment s = holding(address);
    if (s == null || address + count > s.range().end()) {
      return Optional.empty();
    }
    int from = (int) (address - s.address());
    return Optional.of(s.slice(from, from + count));
  }

  /** The parts of the image that lie inside a range. */
  public Contents within(Range range) {
    return new Contents(
        segments.stream()
            .filter(s -> s.range().overlaps(range))
            .map(
                s -> {
                  long from = Math.max(s.address(), range.start());
                  long to = Math.min(s.range().end(), range.end());
                  return new Segment(
                      from, s.slice((int) (from - s.address()), (int) (to - s.address())));
                })
            .toList());
  }

  /** The same bytes, each moved by an offset. */
  public Contents moved(long by) {
    return new Contents(segments.stream().map(s -> s.moved(by)).toList());
  }

  /** One run of bytes over the whole span, gaps filled: what a raw binary file holds. */
  public byte[] flat(int fill) {
    Range span = span();
    if (span.size() > ImageReader.LARGEST_FILE) {
      throw new IllegalArgumentException("the span " + span + " is too wide for one raw file");
    }
    byte[] out = new byte[(int) span.size()];
    Arrays.fill(out, (byte) fill);
    for (Segment s : segments) {
      System.arraycopy(
          s.slice(0, s.length()), 0, out, (int) (s.address() - span.start()), s.length());
    }
    return out;
  }

  private Segment holding(long address) {
    int low = 0;
    int high = segments.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      Segment s = segments.get(middle);
      if (address < s.address()) {
        high = middle - 1;
      } else if (address >= s.range().end()) {
        low = middle + 1;
      } else {
        return s;
      }
    }
    return null;
  }
}
