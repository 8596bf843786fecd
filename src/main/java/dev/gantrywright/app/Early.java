package dev.gantrywright.app;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * A value that is being worked out on a thread of its own, so that whoever wants it later has done
 * something else meanwhile.
 */
public final class Early<T> implements Supplier<T> {
  private final FutureTask<T> task;

  private Early(Supplier<T> work) {
    this.task = new FutureTask<>(work::get);
  }

  /**
   * Begins the work now.
   *
   * @param name of the thread, which does not keep the program alive
   */
  public static <T> Early<T> of(String name, Supplier<T> work) {
    Early<T> early = new Early<>(work);
    Thread thread = new Thread(early.task, name);
    thread.setDaemon(true);
    thread.start();
    return early;
  }

  /**
   * Waits for the value. What the work threw is thrown here.
   *
   * @throws IllegalStateException where this thread is interrupted, which then still stands
   */
  @Override
  public T get() {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      if (e.getCause() instanceof Error fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
