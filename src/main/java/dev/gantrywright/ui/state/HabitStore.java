package dev.gantrywright.ui.state;

import dev.gantrywright.ui.theme.Mode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Keeps {@link Habits} in a small file; losing it costs nothing but the habit. */
public final class HabitStore {
  /** What is cut off here is no whole JSON any more, and counts as no habits. */
  private static final int LARGEST_BYTES = 1 << 20;

  private final Path file;
  private CompletableFuture<Habits> early;

  public HabitStore(Path file) {
    this.file = file;
  }

  /** Begins to read, so that whoever asks first need not wait for the disk. */
  public HabitStore early(Executor background) {
    early = CompletableFuture.supplyAsync(this::fromFile, background);
    return this;
  }

  public Habits read() {
    CompletableFuture<Habits> begun = early;
    early = null;
    return begun == null ? fromFile() : begun.join();
  }

  private Habits fromFile() {
    Habits first = Habits.first();
    try {
      JsonNode json = JsonMapper.shared().readTree(bytes());
      List<String> recent = new ArrayList<>();
      json.path("recent").forEach(each -> recent.add(each.asString()));
      Mode mode = json.path("mode").asString("light").equals("dark") ? Mode.DARK : Mode.LIGHT;
      return new Habits(
              recent,
              mode,
              1,
              json.path("x").asDouble(Double.NaN),
              json.path("y").asDouble(Double.NaN),
              json.path("width").asDouble(first.width()),
              json.path("height").asDouble(first.height()),
              json.path("maximised").asBoolean(false))
          .zoomed(json.path("zoom").asDouble(1));
    } catch (IOException | JacksonException missingOrBroken) {
      return first;
    }
  }

  private byte[] bytes() throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IOException(file + " is no file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(LARGEST_BYTES);
    }
  }

  /** Takes the time of a disk. */
  public synchronized void save(Habits habits) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("recent", habits.recent());
    json.put("mode", habits.mode().word());
    json.put("zoom", habits.zoom());
    if (!Double.isNaN(habits.x()) && !Double.isNaN(habits.y())) {
      json.put("x", habits.x());
      json.put("y", habits.y());
    }
    json.put("width", habits.width());
    json.put("height", habits.height());
    json.put("maximised", habits.maximised());
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Path part = file.resolveSibling(file.getFileName() + ".part");
      Files.write(part, JsonMapper.shared().writeValueAsBytes(json));
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException notKept) {
      // A habit that cannot be kept is no reason to trouble anybody.
      return;
    }
  }
}
