package dev.gantrywright.app;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.SavedLog;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/** Keeps the log of a serial line beside the printer's profile. */
public final class LineRecord {
  private LineRecord() {}

  /**
   * Writes it to {@code NAME.line.log}, or {@code NAME.line-2.log} and so on; leaves no file where
   * it is not written whole.
   *
   * @param share told how much is written, 0 to 1
   * @param stopped asked in between
   * @throws CancellationException when it was stopped
   */
  public static Path keep(Path profile, ByteLog log, DoubleConsumer share, BooleanSupplier stopped)
      throws IOException {
    Path file = BesideProfile.create(profile, "line", "log");
    boolean whole = false;
    try (Writer out = Files.newBufferedWriter(file)) {
      SavedLog.write(log, out, share, stopped);
      whole = true;
    } finally {
      if (!whole) {
        Files.deleteIfExists(file);
      }
    }
    return file;
  }
}
