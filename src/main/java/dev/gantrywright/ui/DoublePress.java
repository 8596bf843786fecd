package dev.gantrywright.ui;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import javafx.application.Platform;

/**
 * Two presses of one key in quick succession.
 *
 * <p>The toolkit does not say when a key was pressed, only that its turn has come. While the window
 * is busy, the second press waits behind what keeps it busy; so a first press is not forgotten at a
 * certain time but when the view's thread, idle again, has had the time of a double press to hand
 * over a second one. Lives on the view's thread.
 */
final class DoublePress {
  /** Two presses within this time are a double press; common practice, no published source. */
  static final long WITHIN_NANOS = 700_000_000L;

  /** A view's thread that is later than this was busy, and may have a press waiting. */
  static final long LATE_NANOS = 100_000_000L;

  private final LongSupplier nanoTime;
  private final Executor later;
  private boolean once;
  private long presses;

  DoublePress() {
    this(
        System::nanoTime,
        CompletableFuture.delayedExecutor(WITHIN_NANOS, TimeUnit.NANOSECONDS, Platform::runLater));
  }

  /**
   * @param nanoTime the monotonic clock
   * @param later runs on the view's thread when {@link #WITHIN_NANOS} are over
   */
  DoublePress(LongSupplier nanoTime, Executor later) {
    this.nanoTime = nanoTime;
    this.later = later;
  }

  /** The key was pressed; true where it was the second press of two. */
  boolean pressed() {
    presses++;
    once = !once;
    if (once) {
      forgetLater(presses);
    }
    return !once;
  }

  private void forgetLater(long press) {
    long due = nanoTime.getAsLong() + WITHIN_NANOS;
    later.execute(() -> forget(press, due));
  }

  private void forget(long press, long due) {
    if (press != presses) {
      return;
    }
    if (nanoTime.getAsLong() - due > LATE_NANOS) {
      forgetLater(press);
    } else {
      once = false;
    }
  }
}
