package dev.gantrywright.header;

/** Told about each file while a folder is read. */
@FunctionalInterface
public interface Progress {
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
}
