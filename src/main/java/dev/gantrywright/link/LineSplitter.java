package dev.gantrywright.link;

import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Cuts a stream of bytes into lines at any mix of CR and LF. An endless line costs no more memory
 * than the cap: the rest of it is counted and dropped.
 */
public final class LineSplitter {
  private final int cap;
  private final Consumer<ReceivedLine> sink;
  private final byte[] line;
  private int length;
  private long dropped;

  /**
   * @param cap longest line kept, in bytes
   * @param sink receives each line that is not empty
   */
  public LineSplitter(int cap, Consumer<ReceivedLine> sink) {
    this.cap = cap;
    this.sink = sink;
    this.line = new byte[cap];
  }

  /**
   * Takes the next bytes.
   *
   * @param nanos when they came, on the monotonic clock
   */
  public void feed(byte[] bytes, int count, long nanos) {
    for (int i = 0; i < count; i++) {
      byte b = bytes[i];
      if (b == '\n' || b == '\r') {
        flush(nanos);
      } else if (length < cap) {
        line[length++] = b;
      } else {
        dropped++;
      }
    }
  }

  /** True while a line has begun and not ended. */
  public boolean inLine() {
    return length > 0;
  }

  /** The line that has begun, as it stands. */
  ReceivedLine begun(long nanos) {
    return new ReceivedLine(new String(line, 0, length, StandardCharsets.UTF_8), nanos, dropped);
  }

  /** Ends the line that has begun, if any: for machines that send no line end. */
  public void flush(long nanos) {
    if (length > 0) {
      String text = new String(line, 0, length, StandardCharsets.UTF_8).strip();
      ReceivedLine received = new ReceivedLine(text, nanos, dropped);
      length = 0;
      dropped = 0;
      if (!text.isEmpty()) {
        sink.accept(received);
      }
    }
  }

  /** Forgets the line that has begun. */
  public void reset() {
    length = 0;
    dropped = 0;
  }
}
