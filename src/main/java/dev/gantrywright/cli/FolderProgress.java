package dev.gantrywright.cli;

import dev.gantrywright.header.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;

/** How far the reading of a firmware folder has come, on the terminal's progress line. */
final class FolderProgress implements Progress, AutoCloseable {
  private final ProgressLine line;
  private final String name;
  private final Progress also;

  /**
   * @param also told too, such as one that ends the reading
   */
  FolderProgress(PrintWriter err, Path folder, Progress also) {
    line = new ProgressLine(err);
    name = folder.toString();
    this.also = also;
  }

  @Override
  public void listed(int entries) {
    also.listed(entries);
    line.at(() -> name + ": " + entries + " entries listed");
  }

  @Override
  public void read(int done, int total, String path) {
    also.read(done, total, path);
    line.at(() -> name + ": read " + done + " of " + total);
  }

  /** Takes the line away. */
  @Override
  public void close() {
    line.clear();
  }
}
