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
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
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
    try {
      return habits(bytes());
    } catch (IOException | JacksonException missingOrBroken) {
      return Habits.first();
    }
  }

  /**
   * Token by token: to bind a document takes ten times the classes, and the window waits for it.
   */
  private static Habits habits(byte[] bytes) {
    List<String> recent = new ArrayList<>();
    Map<String, Double> numbers = new LinkedHashMap<>();
    Mode mode = Mode.LIGHT;
    boolean maximised = false;
    try (JsonParser json = new JsonFactory().createParser(ObjectReadContext.empty(), bytes)) {
      json.nextToken();
      while (json.nextToken() == JsonToken.PROPERTY_NAME) {
        String name = json.currentName();
        JsonToken value = json.nextToken();
        if (name.equals("recent") && value == JsonToken.START_ARRAY) {
          while (json.nextToken() == JsonToken.VALUE_STRING) {
            recent.add(json.getString());
          }
        } else if (name.equals("mode") && value == JsonToken.VALUE_STRING) {
          mode = json.getString().equals(Mode.DARK.word()) ? Mode.DARK : Mode.LIGHT;
        } else if (name.equals("maximised")) {
          maximised = value == JsonToken.VALUE_TRUE;
        } else if (value.isNumeric()) {
          numbers.put(name, json.getDoubleValue());
        } else {
          json.skipChildren();
        }
      }
    }
    Habits first = Habits.first();
    return new Habits(
            recent,
            mode,
            1,
            numbers.getOrDefault("x", Double.NaN),
            numbers.getOrDefault("y", Double.NaN),
            numbers.getOrDefault("width", first.width()),
            numbers.getOrDefault("height", first.height()),
            maximised)
        .zoomed(numbers.getOrDefault("zoom", 1.0));
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
