package dev.gantrywright.link;

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
    return LogText.of(direction, nanos, bytes, 0, bytes.length);
  }
}
