package dev.gantrywright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets a job that writes files end in order when the user presses Ctrl-C: the program waits until
 * the job has cleaned up, a bounded time.
 */
final class CtrlC implements AutoCloseable {
  private static final long LONGEST_SECONDS = 20;

  private final CountDownLatch over = new CountDownLatch(1);
  private final Thread hook = new Thread(this::pressedNow, "end in order");
  private volatile boolean pressed;

  CtrlC() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  boolean pressed() {
    return pressed;
  }

  private void pressedNow() {
    pressed = true;
    try {
      boolean inTime = over.await(LONGEST_SECONDS, TimeUnit.SECONDS);
      pressed |= inTime;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The job is over. */
  @Override
  public void close() {
    over.countDown();
    if (pressed) {
      return;
    }
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The program is going down: the hook is at work and has just been let go.
      return;
    }
  }
}
