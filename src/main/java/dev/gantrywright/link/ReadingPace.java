package dev.gantrywright.link;

import java.util.function.LongConsumer;
import java.util.function.LongSupplier;

/**
 * Bounds how fast a line is read, so that a machine that talks without end leaves the processor to
 * those who show what it says. Nothing is lost: what is not read yet waits on the line and holds
 * the sender up. Serves one thread.
 */
final class ReadingPace {
  /**
   * Bytes of a stretch: 8,192,000 a second, nearly seven times the 1,216,000 that full-speed USB
   * carries in bulk (19 packets of 64 bytes in a frame of 1 ms: USB 2.0 specification, table 5-9).
   */
  static final int BYTES = 32_768;

  /** A stretch: a quarter of the time between two pictures, so that none waits long for a core. */
  static final long NANOS = 4_000_000;

  private final LongSupplier nanoTime;
  private final LongConsumer pause;
  private long end;
  private int left;

  /**
   * @param nanoTime the monotonic clock
   * @param pause waits so many nanoseconds
   */
  ReadingPace(LongSupplier nanoTime, LongConsumer pause) {
    this.nanoTime = nanoTime;
    this.pause = pause;
    this.end = nanoTime.getAsLong();
  }

  /** So many bytes were taken; waits for the end of the stretch where it has had its share. */
  void took(int bytes) {
    long now = nanoTime.getAsLong();
    if (now - end >= 0) {
      end = now + NANOS;
      left = BYTES;
    }
    left -= bytes;
    if (left <= 0) {
      pause.accept(end - now);
    }
  }
}
