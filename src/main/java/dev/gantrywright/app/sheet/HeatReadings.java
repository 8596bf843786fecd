package dev.gantrywright.app.sheet;

import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.record.Sha256;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Sign;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * The readings of a heat-up from the file beside the profile that keeps them, as long as that holds
 * what was recorded.
 *
 * @param response empty where the file is gone, changed or no readings
 * @param standing in words what became of the file
 */
record HeatReadings(Optional<StepResponse> response, Cell standing) {
  /** An hour of readings, twice a second, takes a hundredth of it. */
  private static final long MOST_BYTES = 4 << 20;

  /**
   * @param profile the file that they lie beside
   * @param facts of the heat-up; they may come from anywhere and name anything
   */
  static HeatReadings of(Path profile, JsonNode facts) {
    String name = facts.path("file").asString("");
    try {
      Path plain = Path.of(name);
      if (name.isBlank() || plain.isAbsolute() || plain.getNameCount() != 1) {
        return without("named by no file beside the profile");
      }
      Path file = profile.toAbsolutePath().resolveSibling(plain);
      if (!Files.isRegularFile(file)) {
        return without("not there any more");
      }
      if (Files.size(file) > MOST_BYTES) {
        return without("larger than readings are");
      }
      byte[] bytes = Files.readAllBytes(file);
      if (!Sha256.of(bytes).equals(facts.path("sha256").asString(""))) {
        return without("changed since it was recorded");
      }
      return read(facts, new String(bytes, StandardCharsets.UTF_8));
    } catch (InvalidPathException | IOException unreadable) {
      return without("cannot be read");
    }
  }

  private static HeatReadings read(JsonNode facts, String csv) {
    try {
      StepResponse response =
          StepResponse.ofCsv(
              facts.path("heater").asString(""), facts.path("powerShare").asDouble(0), csv);
      boolean numbers =
          response.points().stream()
              .allMatch(p -> Double.isFinite(p.seconds()) && Double.isFinite(p.celsius()));
      return numbers && !response.points().isEmpty()
          ? new HeatReadings(Optional.of(response), new Cell("as it was recorded", Sign.FINE))
          : without("holds no readings");
    } catch (IllegalArgumentException noReadings) {
      return without("holds no readings");
    }
  }

  private static HeatReadings without(String why) {
    return new HeatReadings(Optional.empty(), new Cell(why, Sign.WARNING));
  }
}
