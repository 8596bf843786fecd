package dev.gantrywright.link;

import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.util.function.Consumer;

/**
 * Reads a log from its first entry, a stretch at a time, and goes on where it stopped while the log
 * grows. Serves one thread.
 */
public final class LogReading {
  private final ByteLog log;
  private long number;
  private long offset;
  private long fileEnd;
  private long missing;

  LogReading(ByteLog log) {
    this.log = log;
  }

  /**
   * Gives the next entries to a sink.
   *
   * @return false when there is no more at this moment
   */
  public boolean more(Consumer<LogEntry> sink) throws IOException {
    ByteLog.Place place = log.from(number);
    fileEnd = place.fileEnd();
    if (fileEnd > 0) {
      try {
        offset =
            log.readFile(
                offset,
                fileEnd,
                entry -> {
                  number++;
                  sink.accept(entry);
                });
        return true;
      } catch (ClosedChannelException closed) {
        return false;
      }
    }
    missing += place.first() - number;
    number = place.first() + place.inMemory().size();
    place.inMemory().forEach(sink);
    return !place.inMemory().isEmpty();
  }

  /** How much of what stands there now has been read, 0 to 1. */
  public double share() {
    return fileEnd == 0 ? 1 : (double) offset / fileEnd;
  }

  /** Entries that were kept neither in the file nor in memory. */
  public long missing() {
    return missing;
  }
}
