package dev.gantrywright.image;

import java.util.Arrays;

/** Bytes that an image puts at one address. The bytes never change. */
public final class Segment {
  private final long address;
  private final byte[] bytes;

  Segment(long address, byte[] bytes) {
    this.address = address;
    this.bytes = bytes;
  }

  public long address() {
    return address;
  }

  public int length() {
    return bytes.length;
  }

  public Range range() {
    return Range.of(address, bytes.length);
  }

  /** A copy of the bytes. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** The byte at an offset into this segment, 0 to 255. */
  public int at(int offset) {
    return bytes[offset] & 0xFF;
  }

  byte[] slice(int from, int to) {
    return Arrays.copyOfRange(bytes, from, to);
  }

  Segment moved(long by) {
    return new Segment(address + by, bytes);
  }
}
