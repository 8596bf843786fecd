package dev.gantrywright.header;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Told of each step while a folder is read: first its entries are listed, then its files are read.
 * What it throws ends the reading there.
 */
@FunctionalInterface
public interface Progress {
  /**
   * One more entry of the folder has been listed, or is about to be looked at; a slow folder takes
   * its time for both.
   *
   * @param entries listed so far, at any depth
   */
  default void listed(int entries) {}

  /**
   * One file has been read.
   *
   * @param done files read so far
   * @param total files to read
   * @param path the file, relative to the folder
   */
  void read(int done, int total, String path);

  /** Tells nobody. */
  static Progress none() {
    return (done, total, path) -> {};
  }

  /**
   * Tells nobody, and ends the reading with a {@link CancellationException}.
   *
   * @param stopped asked at each entry and each file; may be asked from several threads
   */
  static Progress until(BooleanSupplier stopped) {
    return new Progress() {
      @Override
      public void listed(int entries) {
        if (stopped.getAsBoolean()) {
          throw new CancellationException("listing ended after " + entries + " entries");
        }
      }

      @Override
      public void read(int done, int total, String path) {
        if (stopped.getAsBoolean()) {
          throw new CancellationException("reading ended at " + path);
        }
      }
    };
  }
}
