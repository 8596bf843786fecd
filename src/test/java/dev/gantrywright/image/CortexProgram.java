package dev.gantrywright.image;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** A made-up Cortex-M program: vectors, functions that start with PUSH, pointers to them, text. */
public final class CortexProgram {
  private final ByteBuffer bytes;
  private final long base;

  CortexProgram(long base, long stack, int size) {
    this.base = base;
    this.bytes = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    for (int at = 0x200; at + 2 < size; at += 52) {
      bytes.putShort(at, (short) 0xB510);
      bytes.putShort(at + 2, (short) (at * 31 & 0x3FFF));
    }
    bytes.putInt(0, (int) stack);
    vector(1, base + 0x200 + 1);
    for (int n : new int[] {2, 3, 4, 5, 6, 11, 12, 14, 15}) {
      vector(n, base + 0x200 + 52 + 1);
    }
    for (int i = 0; i < 20; i++) {
      word(0x180 + 4 * i, base + 0x200 + 52L * i + 1);
    }
  }

  public static CortexProgram f405(long offset) {
    return new CortexProgram(0x08000000L + offset, 0x20020000L, 4096);
  }

  CortexProgram vector(int index, long value) {
    return word(4 * index, value);
  }

  CortexProgram word(int offset, long value) {
    bytes.putInt(offset, (int) value);
    return this;
  }

  CortexProgram text(int offset, String text) {
    bytes.position(offset);
    bytes.put(text.getBytes(StandardCharsets.US_ASCII)).put((byte) 0);
    return this;
  }

  public byte[] raw() {
    return bytes.array().clone();
  }

  byte[] hex() {
    return Formats.hex(base, raw(), 16);
  }

  Image read() {
    return read(raw());
  }

  static Image read(byte[] file) {
    try {
      return ImageReader.read(file);
    } catch (BrokenImage e) {
      throw new AssertionError(e);
    }
  }
}
