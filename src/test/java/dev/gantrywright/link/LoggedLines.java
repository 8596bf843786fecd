package dev.gantrywright.link;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The lines of a log in which words stand, as rows of text. */
public final class LoggedLines {
  private LoggedLines() {}

  public static List<String> with(ByteLog log, String words) throws IOException {
    List<String> found = new ArrayList<>();
    LogSearch search = new LogSearch(words);
    LineAssembly lines =
        new LineAssembly(
            (way, nanos, bytes, from, to) -> {
              if (search.in(bytes, from, to)) {
                found.add(LogText.of(way, nanos, bytes, from, to));
              }
            });
    LogReading reading = log.reading();
    while (reading.more(lines::add)) {
      // The next stretch.
    }
    lines.end();
    return found;
  }
}
