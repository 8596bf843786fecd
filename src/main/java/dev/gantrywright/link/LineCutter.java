package dev.gantrywright.link;

/**
 * Cuts a stream of bytes at any mix of CR and LF, without making anything of the lines. An endless
 * line costs no more memory than the cap: the rest of it is counted and dropped.
 */
final class LineCutter {
  /** Receives each line that is not empty. */
  @FunctionalInterface
  interface Sink {
    /**
     * A line has ended.
     *
     * @param line begins with it; only good during the call
     * @param length bytes of the line
     * @param nanos when its end came
     * @param dropped bytes left out because the line was too long
     */
    void line(byte[] line, int length, long nanos, long dropped);
  }

  private final Sink sink;
  private final byte[] line;
  private int length;
  private long dropped;

  /**
   * @param cap longest line kept, in bytes
   */
  LineCutter(int cap, Sink sink) {
    this.sink = sink;
    this.line = new byte[cap];
  }

  /**
   * Takes the next bytes.
   *
   * @param nanos when they came, on the monotonic clock
   */
  void feed(byte[] bytes, int count, long nanos) {
    for (int i = 0; i < count; i++) {
      byte b = bytes[i];
      if (b == '\n' || b == '\r') {
        flush(nanos);
      } else if (length < line.length) {
        line[length++] = b;
      } else {
        dropped++;
      }
    }
  }

  /** How much of a line has begun, in bytes. */
  int begun() {
    return length;
  }

  /** Gives the line that has begun to another sink and goes on with it. */
  void peek(long nanos, Sink other) {
    other.line(line, length, nanos, dropped);
  }

  /** Ends the line that has begun, if any: for machines that send no line end. */
  void flush(long nanos) {
    if (length > 0) {
      int ended = length;
      long lost = dropped;
      reset();
      sink.line(line, ended, nanos, lost);
    }
  }

  /** Forgets the line that has begun. */
  void reset() {
    length = 0;
    dropped = 0;
  }
}
