package dev.gantrywright.ui.state;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.LineAssembly;
import dev.gantrywright.link.LogReading;
import dev.gantrywright.link.LogSearch;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Follows a log: its newest lines, or the newest of those in which words stand. What is searched is
 * the whole log, a stretch at each look, so that a long one is shown as it is found. Serves one
 * thread at a time.
 */
public final class LogFollower {
  /** One look through a log takes no longer; a picture comes every sixth look. */
  private static final long LOOK_NANOS = 40_000_000L;

  /**
   * What a look gave.
   *
   * @param rows newest last
   * @param share how much of the log has been looked through, 0 to 1
   * @param number of entries that the log had
   */
  public record Look(LogRows rows, double share, long number) {
    /** True when there is more to look through. */
    public boolean more() {
      return share < 1;
    }
  }

  private final ByteLog log;
  private final int most;
  private final LogRows.Newest lines;
  private final LogReading reading;
  private final LineAssembly found;

  /**
   * @param words that a line must hold; empty for all lines
   * @param most how many lines at most
   */
  public LogFollower(ByteLog log, String words, int most) {
    this.log = log;
    this.most = most;
    lines = new LogRows.Newest(most);
    LogSearch search = new LogSearch(words.strip());
    reading = words.isBlank() ? null : log.reading();
    found =
        new LineAssembly(
            (direction, nanos, bytes, from, to) -> {
              if (search.in(bytes, from, to)) {
                lines.add(direction, nanos, bytes, from, to);
              }
            });
  }

  /**
   * Looks at the log as it is now.
   *
   * @throws UncheckedIOException when its file cannot be read
   */
  public Look look() {
    long number = log.entries();
    if (reading == null) {
      return new Look(newest(), 1, number);
    }
    long end = System.nanoTime() + LOOK_NANOS;
    boolean more = true;
    try {
      while (more && System.nanoTime() - end < 0) {
        more = reading.more(found::add);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Look(lines.rows(), more ? Math.min(reading.share(), 0.99) : 1, number);
  }

  private LogRows newest() {
    lines.clear();
    LineAssembly assembly = new LineAssembly(lines::add);
    log.newest(most).forEach(assembly::add);
    assembly.end();
    return lines.rows();
  }
}
