package dev.gantrywright.patch;

/** Told about each file while the patched folder is written. */
@FunctionalInterface
public interface ExportProgress {
  /**
   * One file stands in the new folder.
   *
   * @param done files written so far
   * @param total files to write
   * @param path the file, relative to the folder
   */
  void written(int done, int total, String path);

  /** Tells nobody. */
  static ExportProgress none() {
    return (done, total, path) -> {};
  }
}
