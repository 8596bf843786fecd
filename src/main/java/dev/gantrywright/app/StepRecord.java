package dev.gantrywright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Keeps the readings of a heater's run beside the printer's profile, each run in its own file. */
public final class StepRecord {
  private StepRecord() {}

  /**
   * Writes them to {@code NAME.HEATER-step.csv}, or {@code -step-2.csv} and so on.
   *
   * @param csv as {@link dev.gantrywright.prove.StepResponse#csv} has it
   */
  public static Path keep(Path profile, String heater, String csv) throws IOException {
    String plain = heater.replaceAll("[^A-Za-z0-9]+", "-");
    return Files.writeString(BesideProfile.create(profile, plain + "-step", "csv"), csv);
  }
}
