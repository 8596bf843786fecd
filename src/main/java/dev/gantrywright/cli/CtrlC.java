package dev.gantrywright.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets a job end in order when the user presses Ctrl-C: the program waits until the job has cleaned
 * up and said so, a bounded time.
 */
final class CtrlC implements AutoCloseable {
  private static final long LONGEST_SECONDS = 20;

  private final CountDownLatch over = new CountDownLatch(1);
  private final Runnable end;
  private final Thread hook = new Thread(this::pressedNow, "end in order");
  private volatile boolean pressed;

  /** For a job that asks {@link #pressed} now and then. */
  CtrlC() {
    this(() -> {});
  }

  /**
   * For a job that has to be told.
   *
   * @param end tells it; called on a thread of its own
   */
  CtrlC(Runnable end) {
    this.end = end;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  boolean pressed() {
    return pressed;
  }

  private void pressedNow() {
    pressed = true;
    try {
      end.run();
      boolean inTime = over.await(LONGEST_SECONDS, TimeUnit.SECONDS);
      pressed |= inTime;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Says what a cut job has to say while the program still waits for it, and goes on with the
   * problem otherwise.
   *
   * @throws Said where the key was pressed
   */
  void tell(PrintWriter err, Exception problem) {
    if (pressed) {
      err.println(problem.getMessage());
      err.flush();
      throw new Said();
    }
  }

  /** The job was cut, and the line about it is printed. */
  static final class Said extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Said() {
      super("cut", null, false, false);
    }
  }

  /** The job is over, and what it had to say is printed. */
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
