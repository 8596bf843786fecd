package dev.gantrywright.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A profile's values by their paths. */
public final class ProfileValues {
  private ProfileValues() {}

  /** The profile as a JSON tree of its own, without what it leaves open. */
  public static ObjectNode tree(PrinterProfile profile) {
    return TreeText.pruned(ProfileFormat.MAPPER.valueToTree(profile));
  }

  /** The value at a path such as {@code axes.x.stepsPerMm}; empty where the profile has none. */
  public static Optional<JsonNode> get(PrinterProfile profile, String path) {
    return PathWalk.get(profile, path);
  }

  /** The value at a path of a tree made by {@link #tree}. */
  public static Optional<JsonNode> get(ObjectNode tree, String path) {
    JsonNode at = tree;
    for (String key : path.split("\\.")) {
      at = at.get(key);
      if (at == null) {
        return Optional.empty();
      }
    }
    return Optional.of(at);
  }

  /**
   * The profile with one value changed.
   *
   * @param value a number, boolean, text, list or map; null takes the value away
   * @throws ProfileProblem where the field does not take that value; nothing is changed
   */
  public static PrinterProfile with(PrinterProfile profile, String path, Object value)
      throws ProfileProblem {
    JsonNode node = ProfileFormat.MAPPER.valueToTree(value);
    PrinterProfile quick = PathWalk.with(profile, path, node);
    PrinterProfile changed = quick == null ? bound(profile, path, node) : quick;
    Ranges.Outside outside = Ranges.first(path, node);
    if (outside != null) {
      throw new ProfileProblem("profile", 0, 0, outside.path(), outside.text());
    }
    return changed;
  }

  /** By way of its tree, which makes sections that are not there and says what is wrong. */
  static PrinterProfile bound(PrinterProfile profile, String path, JsonNode value)
      throws ProfileProblem {
    ObjectNode tree = tree(profile);
    put(tree, path, value);
    return JsonStore.bind("profile", new byte[] {'{', '}'}, tree, PrinterProfile.class);
  }

  private static void put(ObjectNode tree, String path, JsonNode value) throws ProfileProblem {
    String[] keys = path.split("\\.");
    ObjectNode at = tree;
    for (int i = 0; i < keys.length - 1; i++) {
      JsonNode next = at.get(keys[i]);
      if (next == null) {
        next = at.putObject(keys[i]);
      }
      if (!(next instanceof ObjectNode object)) {
        throw new ProfileProblem("profile", 0, 0, path, "holds a value where a section is needed");
      }
      at = object;
    }
    if (value == null || value.isNull()) {
      at.remove(keys[keys.length - 1]);
    } else {
      at.set(keys[keys.length - 1], value);
    }
  }

  /** Every concrete field path of this profile: one for each axis, axis end and heater it has. */
  public static List<String> paths(PrinterProfile profile) {
    List<String> paths = new ArrayList<>();
    Map<String, ? extends Map<String, ?>> groups =
        Map.of(
            "axes", profile.axes(), "endstops", profile.endstops(), "heaters", profile.heaters());
    for (Field field : Fields.all()) {
      if (field.path().indexOf('*') < 0) {
        paths.add(field.path());
      } else {
        String group = field.path().substring(0, field.path().indexOf('.'));
        groups.get(group).keySet().forEach(name -> paths.add(field.at(name)));
      }
    }
    return paths;
  }
}
