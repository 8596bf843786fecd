package dev.gantrywright.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;

/**
 * Parts that several printers share, read once however many threads ask. The parts asked for last
 * are kept, so that memory does not grow with the number of printers. Safe for several threads.
 */
final class SharedParts<T> {
  private final Map<Path, CompletableFuture<T>> kept;

  /**
   * @param most how many are kept
   */
  SharedParts(int most) {
    kept =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<Path, CompletableFuture<T>> eldest) {
            return size() > most;
          }
        };
  }

  /** The part in a file; the one thread that asks first reads it, the others wait. */
  T get(Path file, Function<Path, T> read) {
    CompletableFuture<T> mine = new CompletableFuture<>();
    CompletableFuture<T> known;
    synchronized (kept) {
      known = kept.putIfAbsent(file, mine);
    }
    if (known == null) {
      try {
        mine.complete(read.apply(file));
      } catch (RuntimeException fault) {
        mine.completeExceptionally(fault);
      }
      known = mine;
    }
    try {
      return known.join();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException fault ? fault : e;
    }
  }
}
