package dev.gantrywright.names;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * Which macro or build-settings key of a firmware folder carries which profile value: a {@code
 * *.names.json} file.
 *
 * @param fields by field path, such as {@code axes.z.stepsPerMm}
 * @param boards the board constants found in the folder
 * @param targets the build targets found in the folder
 * @param more keys that this version does not know; kept on saving
 */
public record NameMap(
    Map<String, NameEntry> fields,
    List<BoardConstant> boards,
    List<BuildTarget> targets,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  /** A map that knows nothing yet. */
  public static final NameMap EMPTY = new NameMap(null, null, null, null);

  public NameMap {
    fields = Ordered.map(fields);
    boards = Ordered.list(boards);
    targets = Ordered.list(targets);
    more = Ordered.map(more);
  }

  /** The entry of a field; empty where the map does not speak of it. */
  public Optional<NameEntry> entry(String path) {
    return Optional.ofNullable(fields.get(path));
  }

  /** The same map with one entry set; the rest keeps its order. */
  public NameMap with(String path, NameEntry entry) {
    Map<String, NameEntry> next = new LinkedHashMap<>(fields);
    next.put(path, entry);
    return new NameMap(next, boards, targets, more);
  }

  /** The same map without one entry. */
  public NameMap without(String path) {
    Map<String, NameEntry> next = new LinkedHashMap<>(fields);
    next.remove(path);
    return new NameMap(next, boards, targets, more);
  }

  /** The entries that the user set. */
  public Map<String, NameEntry> userChoices() {
    Map<String, NameEntry> chosen = new LinkedHashMap<>();
    fields.forEach(
        (path, entry) -> {
          if (entry.byUser()) {
            chosen.put(path, entry);
          }
        });
    return chosen;
  }
}
