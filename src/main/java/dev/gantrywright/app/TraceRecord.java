package dev.gantrywright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Keeps a trace of the endstops beside the printer's profile, each in its own file. */
public final class TraceRecord {
  private TraceRecord() {}

  /**
   * Writes it to {@code NAME.trace.csv}, or {@code NAME.trace-2.csv} and so on.
   *
   * @param csv as {@link dev.gantrywright.prove.TraceCsv} has it
   */
  public static Path keep(Path profile, String csv) throws IOException {
    return Files.writeString(BesideProfile.create(profile, "trace", "csv"), csv);
  }
}
