package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;

/** Bytes of a log as a row of text: seconds, direction, the bytes. */
public final class LogText {
  private static final String HEX = "0123456789ABCDEF";

  /** Characters of the seconds, with six places: right-aligned up to eleven days. */
  private static final int SECONDS = 13;

  private static final int PLACES = 6;

  private LogText() {}

  /**
   * Unprintable bytes as {@code \xNN}.
   *
   * @param nanos since the beginning of the log
   * @param bytes from one place to before another
   */
  public static String of(Direction direction, long nanos, byte[] bytes, int from, int to) {
    StringBuilder b = new StringBuilder(SECONDS + 3 + to - from);
    seconds(b, nanos);
    b.append(' ').append(direction.sign()).append(' ');
    for (int i = from; i < to; i++) {
      int c = bytes[i] & 0xFF;
      switch (c) {
        case '\n' -> b.append("\\n");
        case '\r' -> b.append("\\r");
        case '\t' -> b.append("\\t");
        case '\\' -> b.append("\\\\");
        default -> {
          if (c >= ' ' && c < 0x7F) {
            b.append((char) c);
          } else {
            b.append("\\x").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 0xF));
          }
        }
      }
    }
    return b.toString();
  }

  private static void seconds(StringBuilder b, long nanos) {
    String micros = Long.toString(Math.floorDiv(nanos + 500, 1000L));
    int whole = Math.max(1, micros.length() - PLACES);
    b.append(" ".repeat(Math.max(0, SECONDS - PLACES - 1 - whole)));
    b.append(micros.length() > PLACES ? micros.substring(0, whole) : "0").append('.');
    b.append("0".repeat(Math.max(0, PLACES - micros.length())));
    b.append(micros, Math.max(0, micros.length() - PLACES), micros.length());
  }
}
