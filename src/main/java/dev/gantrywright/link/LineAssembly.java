package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

/** Puts the pieces of a log back together to whole lines, each way for itself. */
final class LineAssembly {
  private static final int LONGEST = 4096;

  private final Map<Direction, LineSplitter> splitters = new EnumMap<>(Direction.class);
  private long nanos;

  LineAssembly(Consumer<LogEntry> sink) {
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

  void add(LogEntry entry) {
    nanos = entry.nanos();
    splitters.get(entry.direction()).feed(entry.bytes(), entry.bytes().length, nanos);
  }

  void end() {
    splitters.values().forEach(splitter -> splitter.flush(nanos));
  }
}
