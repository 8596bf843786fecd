package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * A log as text: every byte of it, one line a row, put together where reads have cut it. A row has
 * the time at which its end came.
 */
public final class SavedLog {
  /** A longer line goes on in the next row. */
  private static final int LONGEST = 4096;

  private final Writer out;
  private final Map<Direction, ByteArrayOutputStream> begun = new EnumMap<>(Direction.class);
  private long nanos;
  private long told;

  private SavedLog(Writer out) {
    this.out = out;
    for (Direction direction : Direction.values()) {
      begun.put(direction, new ByteArrayOutputStream());
    }
  }

  /**
   * Writes a log as it stands now.
   *
   * @param share told how much is written, 0 to 1
   * @param stopped asked in between
   * @throws CancellationException when it was stopped
   */
  public static void write(ByteLog log, Writer out, DoubleConsumer share, BooleanSupplier stopped)
      throws IOException {
    SavedLog saved = new SavedLog(out);
    LogReading reading = log.reading();
    long last = log.entries();
    long[] seen = {0};
    try {
      boolean more = true;
      while (more && seen[0] < last) {
        if (stopped.getAsBoolean()) {
          throw new CancellationException();
        }
        more =
            reading.more(
                entry -> {
                  if (seen[0]++ < last) {
                    saved.missing(reading.missing());
                    saved.add(entry);
                  }
                });
        share.accept(Math.min(1, (double) seen[0] / last));
      }
      for (Direction direction : Direction.values()) {
        saved.row(direction);
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private void missing(long entries) {
    if (entries > told) {
      told = entries;
      put("(here " + entries + " reads were not kept: the log's file was full)");
    }
  }

  private void add(LogEntry entry) {
    nanos = entry.nanos();
    ByteArrayOutputStream line = begun.get(entry.direction());
    for (byte b : entry.bytes()) {
      line.write(b);
      if (b == '\n' || line.size() >= LONGEST) {
        row(entry.direction());
      }
    }
  }

  private void row(Direction direction) {
    byte[] line = begun.get(direction).toByteArray();
    if (line.length == 0) {
      return;
    }
    begun.get(direction).reset();
    put(LogText.of(direction, nanos, line, 0, line.length));
  }

  private void put(String row) {
    try {
      out.write(row);
      out.write('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
