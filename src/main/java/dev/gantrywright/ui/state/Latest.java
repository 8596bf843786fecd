package dev.gantrywright.ui.state;

import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * Computes off the view's thread and hands over only what belongs to the newest input: an input
 * that arrives while another is being computed replaces every one that waits, and a result whose
 * input has been overtaken is dropped.
 *
 * <p>All calls but the computation itself run on the view's thread.
 */
public final class Latest<I, O> {
  private final Executor background;
  private final Executor view;
  private final Function<I, O> work;
  private final BiConsumer<I, O> done;
  private final BiConsumer<I, RuntimeException> failed;
  private final Cell<Boolean> busy = new Cell<>(false);
  private long newest;
  private boolean running;
  private I waiting;

  public Latest(
      Executor background,
      Executor view,
      Function<I, O> work,
      BiConsumer<I, O> done,
      BiConsumer<I, RuntimeException> failed) {
    this.background = background;
    this.view = view;
    this.work = work;
    this.done = done;
    this.failed = failed;
  }

  /** True from the first input until the result of the newest one is there. */
  public Cell<Boolean> busy() {
    return busy;
  }

  /** A new input; supersedes all earlier ones. */
  public void put(I input) {
    newest++;
    busy.set(true);
    if (running) {
      waiting = input;
    } else {
      start(input, newest);
    }
  }

  /** Drops what is under way, as when the document is closed. */
  public void forget() {
    newest++;
    waiting = null;
    busy.set(false);
  }

  private void start(I input, long number) {
    running = true;
    background.execute(
        () -> {
          O result = null;
          RuntimeException problem = null;
          try {
            result = work.apply(input);
          } catch (RuntimeException e) {
            problem = e;
          }
          O value = result;
          RuntimeException thrown = problem;
          view.execute(() -> finish(input, number, value, thrown));
        });
  }

  private void finish(I input, long number, O result, RuntimeException problem) {
    running = false;
    if (waiting != null) {
      I next = waiting;
      waiting = null;
      start(next, newest);
    } else if (number == newest) {
      busy.set(false);
    }
    if (number == newest) {
      if (problem == null) {
        done.accept(input, result);
      } else {
        failed.accept(input, problem);
      }
    }
  }
}
