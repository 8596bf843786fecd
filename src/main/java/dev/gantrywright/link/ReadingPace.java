package dev.gantrywright.link;

import java.util.function.LongConsumer;
import java.util.function.LongSupplier;

/**
 * Bounds how fast a line is read and how much of the time, so that a machine that talks without end
 * leaves the processor to those who show what it says, also while the program is new and slow.
 * Nothing is lost: what is not read yet waits on the line and holds the sender up. Serves one
 * thread.
 */
final class ReadingPace {
  /**
   * Bytes of a stretch: 8,192,000 a second, nearly seven times the 1,216,000 that full-speed USB
   * carries in bulk (19 packets of 64 bytes in a frame of 1 ms: USB 2.0 specification, table 5-9).
   */
  static final int BYTES = 32_768;

  /** A stretch: a quarter of the time between two pictures, so that none waits long for a core. */
  static final long NANOS = 4_000_000;

  /** Half of a stretch: who has worked so long in one rests as long. */
  static final long WORK_NANOS = NANOS / 2;

  /** A rest is no longer, though the work was: it was kept waiting for a core itself. */
  static final long LONGEST_REST_NANOS = 2 * NANOS;

  private final LongSupplier nanoTime;
  private final LongConsumer pause;
  private long begun;
  private long end;
  private long worked;
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

  /** What the line brought is being taken from now on. */
  void takes() {
    begun = nanoTime.getAsLong();
    if (begun - end >= 0) {
      end = begun + NANOS;
      left = BYTES;
      worked = 0;
    }
  }

  /** So many bytes were taken; rests where this stretch has had its share. */
  void took(int bytes) {
    long now = nanoTime.getAsLong();
    left -= bytes;
    worked += now - begun;
    if (left <= 0 || worked >= WORK_NANOS) {
      pause.accept(Math.min(LONGEST_REST_NANOS, Math.max(end - now, worked)));
      end = nanoTime.getAsLong();
    }
  }
}
