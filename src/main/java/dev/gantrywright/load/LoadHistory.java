package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What was loaded onto one board: a file, one line a load, newest last. */
public final class LoadHistory {
  /**
   * One load.
   *
   * @param to the card, drive or command
   * @param reason why an error of the image was overridden; empty where none was
   * @param pending what to look for when the card returns; empty for other ways of loading
   */
  public record Entry(
      Instant when,
      String file,
      String sha256,
      String to,
      String reason,
      Optional<PendingLoad> pending) {}

  private static final int LARGEST_BYTES = 64 << 20;

  private final Path file;

  public LoadHistory(Path file) {
    this.file = file;
  }

  public void add(Entry e) throws IOException {
    ObjectNode line = JsonMapper.shared().createObjectNode();
    line.put("when", e.when().toString());
    line.put("file", e.file());
    line.put("sha256", e.sha256());
    line.put("to", e.to());
    line.put("reason", e.reason());
    e.pending()
        .ifPresent(
            p -> {
              ObjectNode n = line.putObject("pending");
              n.put("name", p.name());
              n.put("sign", p.sign().name());
              p.renamedTo().ifPresent(r -> n.put("renamedTo", r));
              p.signBefore().ifPresent(s -> n.put("signBefore", s));
            });
    if (file.getParent() != null) {
      Files.createDirectories(file.getParent());
    }
    Files.write(
        file,
        (line.toString() + "\n").getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  /** Every load, oldest first; a line that cannot be read is passed over. */
  public List<Entry> all() throws IOException {
    List<Entry> out = new ArrayList<>();
    if (Files.isRegularFile(file)) {
      for (String line : text().split("\n")) {
        read(line).ifPresent(out::add);
      }
    }
    return out;
  }

  /** The last load. */
  public Optional<Entry> last() throws IOException {
    List<Entry> all = all();
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
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
      Instant when = Instant.parse(n.path("when").asString(""));
      String sha = n.path("sha256").asString("");
      JsonNode p = n.path("pending");
      Optional<PendingLoad> pending =
          p.isMissingNode()
              ? Optional.empty()
              : Optional.of(
                  new PendingLoad(
                      p.path("name").asString(""),
                      sha,
                      when,
                      LoaderSign.valueOf(p.path("sign").asString("")),
                      text(p, "renamedTo"),
                      text(p, "signBefore")));
      return Optional.of(
          new Entry(
              when,
              n.path("file").asString(""),
              sha,
              n.path("to").asString(""),
              n.path("reason").asString(""),
              pending));
    } catch (JacksonException | java.time.DateTimeException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> text(JsonNode n, String key) {
    return n.hasNonNull(key) ? Optional.of(n.get(key).asString("")) : Optional.empty();
  }
}
