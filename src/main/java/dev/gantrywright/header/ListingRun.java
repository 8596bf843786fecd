package dev.gantrywright.header;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;

/** Lists many files on several threads and hands the listings on in the order of the files. */
public final class ListingRun {
  /** Takes the listings, one call a file, all on the thread that called {@link #run}. */
  public interface Receiver {
    /** One listing. */
    void listed(MacroListing listing) throws IOException;

    /** A file that could not be read. */
    void unreadable(Path file, IOException why) throws IOException;
  }

  private record Result(MacroListing listing, IOException why) {}

  private final LiveMacros macros;
  private final List<Path> files;
  private final Result[] results;
  private final AtomicInteger next = new AtomicInteger();

  private ListingRun(LiveMacros macros, List<Path> files) {
    this.macros = macros;
    this.files = files;
    this.results = new Result[files.size()];
  }

  /**
   * Lists the files.
   *
   * @param helpers how many tasks to give to the executor; the calling thread works too
   */
  public static void run(
      LiveMacros macros, List<Path> files, Executor executor, int helpers, Receiver receiver)
      throws IOException {
    ListingRun run = new ListingRun(macros, List.copyOf(files));
    for (int i = 0; i < helpers; i++) {
      executor.execute(run.new Work());
    }
    run.receive(receiver);
  }

  /** One helper's part. */
  private final class Work implements Runnable {
    @Override
    public void run() {
      while (one()) {
        // the next file
      }
    }
  }

  /** Lists one more file if there is one. */
  private boolean one() {
    int i = next.getAndIncrement();
    if (i >= results.length) {
      return false;
    }
    Result result;
    try {
      result = new Result(macros.of(files.get(i)), null);
    } catch (IOException e) {
      result = new Result(null, e);
    } catch (RuntimeException e) {
      result = new Result(null, new IOException("could not be listed: " + e, e));
    }
    synchronized (this) {
      results[i] = result;
      notifyAll();
    }
    return true;
  }

  private void receive(Receiver receiver) throws IOException {
    for (int i = 0; i < results.length; i++) {
      Result result = await(i);
      if (result.listing() != null) {
        receiver.listed(result.listing());
      } else {
        receiver.unreadable(files.get(i), result.why());
      }
    }
  }

  private Result await(int i) throws IOException {
    while (true) {
      synchronized (this) {
        Result result = results[i];
        if (result != null) {
          results[i] = null;
          return result;
        }
      }
      if (!one()) {
        waitFor(i);
      }
    }
  }

  private synchronized void waitFor(int i) throws IOException {
    try {
      while (results[i] == null) {
        wait();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }
}
