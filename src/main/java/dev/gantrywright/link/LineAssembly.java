package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Puts the pieces of a log back together to whole lines, each way for itself. Of a line longer than
 * 4,096 bytes the rest is dropped; empty lines are left out.
 */
public final class LineAssembly {
  private static final int LONGEST = 4096;

  private final Map<Direction, LineSplitter> splitters = new EnumMap<>(Direction.class);
  private long nanos;

  /**
   * @param sink receives each line as an entry of its own, without its line end
   */
  public LineAssembly(Consumer<LogEntry> sink) {
    for (Direction direction : Direction.values()) {
      splitters.put(
          direction,
          new LineSplitter(
              LONGEST,
              line ->
                  sink.accept(
                      new LogEntry(
                          direction,
                          line.nanos(),
                          line.text().getBytes(java.nio.charset.StandardCharsets.UTF_8)))));
    }
  }

  /** Takes the next piece, in the order of the log. */
  public void add(LogEntry entry) {
    nanos = entry.nanos();
    splitters.get(entry.direction()).feed(entry.bytes(), entry.bytes().length, nanos);
  }

  /** Ends the lines that have begun. */
  public void end() {
    splitters.values().forEach(splitter -> splitter.flush(nanos));
  }
}
