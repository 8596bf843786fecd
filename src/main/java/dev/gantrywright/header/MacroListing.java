package dev.gantrywright.header;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;

/** The macros live at the end of one file, as lines sorted by name. */
public final class MacroListing {
  private final Path file;
  private final ByteSink lines;
  private final List<Problem> problems;

  MacroListing(Path file, ByteSink lines, List<Problem> problems) {
    this.file = file;
    this.lines = lines;
    this.problems = List.copyOf(problems);
  }

  /** The file that was listed. */
  public Path file() {
    return file;
  }

  /** The {@code #define} lines, each ended by a line feed, in the bytes of the files. */
  public byte[] lines() {
    return lines.toArray();
  }

  /** Writes {@link #lines} without copying them. */
  public void writeTo(OutputStream out) throws IOException {
    out.write(lines.array(), 0, lines.size());
  }

  /** What went wrong on the way: headers not found, {@code #error} lines that are live. */
  public List<Problem> problems() {
    return problems;
  }
}
