package dev.gantrywright.header;

import java.nio.charset.Charset;
import java.util.List;

/** Judges a line that shall be added to a header: one whole definition or comment. */
final class LineCheck {
  private LineCheck() {}

  /** What keeps the text from standing as a line of its own, or null. */
  static String fault(String line, Charset charset) {
    if (line.indexOf('\n') >= 0 || line.indexOf('\r') >= 0 || line.indexOf('\0') >= 0) {
      return "the line to add is not one line";
    }
    if (!charset.newEncoder().canEncode(line)) {
      return "the file's encoding has no such character as the line to add holds";
    }
    if (line.endsWith("\\")) {
      return "the line to add ends in a backslash, which would join the next line to it";
    }
    SourceFile alone = SourceFile.of("line", line.getBytes(charset));
    List<Problem> problems = alone.problems();
    if (!problems.isEmpty()) {
      return "the line to add cannot stand alone: " + problems.get(0).text();
    }
    return null;
  }
}
