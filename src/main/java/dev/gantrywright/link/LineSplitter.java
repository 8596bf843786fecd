package dev.gantrywright.link;

import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Cuts a stream of bytes into lines of text at any mix of CR and LF. An endless line costs no more
 * memory than the cap: the rest of it is counted and dropped.
 */
public final class LineSplitter {
  private final LineCutter cutter;

  /**
   * @param cap longest line kept, in bytes
   * @param sink receives each line that is not empty
   */
  public LineSplitter(int cap, Consumer<ReceivedLine> sink) {
    this.cutter =
        new LineCutter(
            cap,
            (line, length, nanos, dropped) -> {
              String text = new String(line, 0, length, StandardCharsets.UTF_8).strip();
              if (!text.isEmpty()) {
                sink.accept(new ReceivedLine(text, nanos, dropped));
              }
            });
  }

  /**
   * Takes the next bytes.
   *
   * @param nanos when they came, on the monotonic clock
   */
  public void feed(byte[] bytes, int count, long nanos) {
    cutter.feed(bytes, count, nanos);
  }

  /** True while a line has begun and not ended. */
  public boolean inLine() {
    return cutter.begun() > 0;
  }

  /** The line that has begun, as it stands. */
  ReceivedLine begun(long nanos) {
    ReceivedLine[] begun = new ReceivedLine[1];
    cutter.peek(
        nanos,
        (line, length, at, dropped) ->
            begun[0] =
                new ReceivedLine(new String(line, 0, length, StandardCharsets.UTF_8), at, dropped));
    return begun[0];
  }

  /** Ends the line that has begun, if any: for machines that send no line end. */
  public void flush(long nanos) {
    cutter.flush(nanos);
  }

  /** Forgets the line that has begun. */
  public void reset() {
    cutter.reset();
  }
}
