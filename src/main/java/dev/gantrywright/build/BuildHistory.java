package dev.gantrywright.build;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The builds of one printer, kept in a file: one line a build, newest last. */
public final class BuildHistory {
  /**
   * One build.
   *
   * @param artefactSha256 of the image that it left; empty where it left none
   */
  public record Entry(
      Instant started,
      Duration took,
      BuildResult.Outcome outcome,
      int attempts,
      String command,
      long errors,
      long warnings,
      String artefact,
      String artefactSha256) {}

  private static final int LARGEST_BYTES = 64 << 20;

  private final Path file;

  public BuildHistory(Path file) {
    this.file = file;
  }

  /** Adds a build. A line is written in one piece, so that a crash loses one build at most. */
  public void add(Entry e) throws IOException {
    ObjectNode line = JsonMapper.shared().createObjectNode();
    line.put("started", e.started().toString());
    line.put("millis", e.took().toMillis());
    line.put("outcome", e.outcome().name());
    line.put("attempts", e.attempts());
    line.put("command", e.command());
    line.put("errors", e.errors());
    line.put("warnings", e.warnings());
    line.put("artefact", e.artefact());
    line.put("sha256", e.artefactSha256());
    if (file.getParent() != null) {
      Files.createDirectories(file.getParent());
    }
    byte[] bytes = (line.toString() + "\n").getBytes(StandardCharsets.UTF_8);
    Files.write(file, bytes, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }

  /** Every build, oldest first; a line that cannot be read is passed over. */
  public List<Entry> all() throws IOException {
    List<Entry> out = new ArrayList<>();
    if (!Files.isRegularFile(file)) {
      return out;
    }
    for (String line : text().split("\n")) {
      read(line).ifPresent(out::add);
    }
    return out;
  }

  /** How long the last build took that ended well: what the next will take, about. */
  public Optional<Duration> usual() throws IOException {
    List<Entry> all = all();
    for (int i = all.size() - 1; i >= 0; i--) {
      if (all.get(i).outcome() == BuildResult.Outcome.BUILT) {
        return Optional.of(all.get(i).took());
      }
    }
    return Optional.empty();
  }

  /** Bytes that are no UTF-8 spoil their line only. */
  private String text() throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
      if (bytes.length > LARGEST_BYTES) {
        throw new IOException(file + ": is larger than 64 MiB; move it away to begin a new one");
      }
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  private static Optional<Entry> read(String line) {
    try {
      JsonNode n = JsonMapper.shared().readTree(line);
      return Optional.of(
          new Entry(
              Instant.parse(n.path("started").asString("")),
              Duration.ofMillis(n.path("millis").asLong(0)),
              BuildResult.Outcome.valueOf(n.path("outcome").asString("")),
              n.path("attempts").asInt(1),
              n.path("command").asString(""),
              n.path("errors").asLong(0),
              n.path("warnings").asLong(0),
              n.path("artefact").asString(""),
              n.path("sha256").asString("")));
    } catch (JacksonException | java.time.DateTimeException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
