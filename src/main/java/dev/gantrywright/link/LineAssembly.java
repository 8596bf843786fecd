package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.util.EnumMap;
import java.util.Map;

/**
 * Puts the pieces of a log back together to whole lines, each way for itself. Of a line longer than
 * 4,096 bytes the rest is dropped; empty lines and space around a line are left out.
 */
public final class LineAssembly {
  private static final int LONGEST = 4096;

  private final Map<Direction, LineCutter> cutters = new EnumMap<>(Direction.class);
  private long nanos;

  /** Receives each line. */
  @FunctionalInterface
  public interface Sink {
    /**
     * A line is whole.
     *
     * @param direction to or from the machine
     * @param nanos when its end came, counted from the beginning of the log
     * @param bytes hold it without its line end, from one place to before another; only good during
     *     the call
     */
    void line(Direction direction, long nanos, byte[] bytes, int from, int to);
  }

  public LineAssembly(Sink sink) {
    for (Direction direction : Direction.values()) {
      cutters.put(
          direction,
          new LineCutter(
              LONGEST, (line, length, at, dropped) -> stripped(sink, direction, at, line, length)));
    }
  }

  private static void stripped(
      Sink sink, Direction direction, long nanos, byte[] line, int length) {
    int from = 0;
    int to = length;
    while (from < to && space(line[from])) {
      from++;
    }
    while (to > from && space(line[to - 1])) {
      to--;
    }
    if (from < to) {
      sink.line(direction, nanos, line, from, to);
    }
  }

  private static boolean space(byte b) {
    return b == ' ' || b == '\t';
  }

  /** Takes the next piece, in the order of the log. */
  public void add(LogEntry entry) {
    nanos = entry.nanos();
    cutters.get(entry.direction()).feed(entry.bytes(), entry.bytes().length, nanos);
  }

  /** Ends the lines that have begun. */
  public void end() {
    cutters.values().forEach(cutter -> cutter.flush(nanos));
  }
}
