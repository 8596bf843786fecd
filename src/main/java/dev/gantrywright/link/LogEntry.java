package dev.gantrywright.link;

import java.util.Locale;

/**
 * Bytes that went one way at one moment.
 *
 * @param direction to or from the machine
 * @param nanos on the monotonic clock, counted from the beginning of the log
 * @param bytes as they went
 */
public record LogEntry(Direction direction, long nanos, byte[] bytes) {
  /** Which way bytes went. */
  public enum Direction {
    SENT('>'),
    RECEIVED('<');

    private final char sign;

    Direction(char sign) {
      this.sign = sign;
    }

    public char sign() {
      return sign;
    }
  }

  /** Seconds, direction and the bytes, unprintable ones as {@code \xNN}. */
  public String text() {
    StringBuilder b = new StringBuilder();
    b.append(String.format(Locale.ROOT, "%13.6f %c ", nanos / 1e9, direction.sign()));
    for (byte raw : bytes) {
      int c = raw & 0xFF;
      switch (c) {
        case '\n' -> b.append("\\n");
        case '\r' -> b.append("\\r");
        case '\t' -> b.append("\\t");
        case '\\' -> b.append("\\\\");
        default -> {
          if (c >= ' ' && c < 0x7F) {
            b.append((char) c);
          } else {
            b.append(String.format(Locale.ROOT, "\\x%02X", c));
          }
        }
      }
    }
    return b.toString();
  }
}
