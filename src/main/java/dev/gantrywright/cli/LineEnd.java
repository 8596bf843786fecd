package dev.gantrywright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C while a machine's line is open: the verb is told, and the line is given up only when the
 * verb has done and said what there is to do and to say, a bounded time.
 */
final class LineEnd implements AutoCloseable {
  private final CountDownLatch pressed = new CountDownLatch(1);
  private final CountDownLatch over = new CountDownLatch(1);
  private final long longestSeconds;

  /**
   * @param longestSeconds that the line waits for the verb
   */
  LineEnd(MachineLine machine, long longestSeconds) {
    this.longestSeconds = longestSeconds;
    machine.beforeGivingUp(this::endAndWait);
  }

  boolean pressed() {
    return pressed.getCount() == 0;
  }

  /** Waits for the key, or so many seconds where they are more than none. */
  void await(double seconds) throws InterruptedException {
    if (seconds > 0) {
      long nanos = (long) (seconds * 1e9);
      pressed.await(nanos, TimeUnit.NANOSECONDS);
    } else {
      pressed.await();
    }
  }

  /** All is done and said: a program that is going down may go. */
  @Override
  public void close() {
    over.countDown();
  }

  private void endAndWait() {
    pressed.countDown();
    try {
      over.await(longestSeconds, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
