package dev.gantrywright.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Works through a list on several threads and hands the answers over one by one, in the order of
 * the list. Only a window of answers is held, however long the list is.
 */
final class InOrder {
  /** Items that one thread works through in a row. */
  private static final int CHUNK = 16;

  /** Chunks that are worked on or wait to be handed over, for each thread. */
  private static final int WINDOW = 4;

  private final int threads;

  InOrder(int threads) {
    this.threads = threads;
  }

  /**
   * Runs the work.
   *
   * @param work called on any thread
   * @param take called on the caller's thread; false stops the run
   * @return whether every answer was taken; false also where the caller's thread was interrupted,
   *     which then still stands
   */
  <I, O> boolean run(List<I> items, Function<I, O> work, Predicate<O> take) {
    int chunks = (items.size() + CHUNK - 1) / CHUNK;
    ExecutorService pool =
        Executors.newFixedThreadPool(
            Math.max(1, Math.min(threads, chunks)),
            task -> {
              Thread thread = new Thread(task, "check");
              thread.setDaemon(true);
              return thread;
            });
    try {
      return handOver(items, chunks, work, take, pool);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } finally {
      pool.shutdownNow();
    }
  }

  private <I, O> boolean handOver(
      List<I> items, int chunks, Function<I, O> work, Predicate<O> take, ExecutorService pool)
      throws InterruptedException {
    Deque<Future<List<O>>> window = new ArrayDeque<>();
    Iterator<Integer> next = java.util.stream.IntStream.range(0, chunks).iterator();
    while (next.hasNext() || !window.isEmpty()) {
      while (next.hasNext() && window.size() < threads * WINDOW) {
        int from = next.next() * CHUNK;
        List<I> part = items.subList(from, Math.min(items.size(), from + CHUNK));
        window.add(pool.submit(() -> part.stream().map(work).toList()));
      }
      for (O answer : result(window.remove())) {
        if (!take.test(answer)) {
          return false;
        }
      }
    }
    return true;
  }

  private static <T> T result(Future<T> future) throws InterruptedException {
    try {
      return future.get();
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
