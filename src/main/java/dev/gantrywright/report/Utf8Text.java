package dev.gantrywright.report;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A text that grows as UTF-8, in a buffer that can be used again: a long run writes megabytes, and
 * building, joining and encoding strings would take longer than finding what they say.
 */
public final class Utf8Text {
  private static final int START = 1 << 14;

  private byte[] bytes = new byte[START];
  private int length;

  /** Adds a text. */
  public Utf8Text add(String text) {
    return add(text, 0, text.length());
  }

  /** Adds the characters of a text from one index up to another. */
  public Utf8Text add(String text, int from, int to) {
    room(to - from);
    for (int at = from; at < to; at++) {
      char letter = text.charAt(at);
      if (letter >= 0x80) {
        return encoded(text.substring(at, to));
      }
      bytes[length++] = (byte) letter;
    }
    return this;
  }

  private Utf8Text encoded(String text) {
    byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
    room(encoded.length);
    System.arraycopy(encoded, 0, bytes, length, encoded.length);
    length += encoded.length;
    return this;
  }

  private void room(int more) {
    if (bytes.length - length < more) {
      bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
    }
  }

  /** Empties it; the buffer stays. */
  public Utf8Text clear() {
    length = 0;
    return this;
  }

  /** A copy of the bytes so far. */
  public byte[] bytes() {
    return Arrays.copyOf(bytes, length);
  }

  @Override
  public String toString() {
    return new String(bytes, 0, length, StandardCharsets.UTF_8);
  }
}
