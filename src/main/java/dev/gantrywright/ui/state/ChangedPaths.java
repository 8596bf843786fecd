package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Where two profiles differ, by field path. */
final class ChangedPaths {
  private ChangedPaths() {}

  /** Paths of the values that differ; the path of a whole section that only one of them has. */
  static List<String> between(ObjectNode before, ObjectNode after) {
    List<String> paths = new ArrayList<>();
    add("", before, after, paths);
    return paths;
  }

  private static void add(String at, ObjectNode before, ObjectNode after, List<String> paths) {
    before
        .properties()
        .forEach(
            entry -> {
              JsonNode now = after.get(entry.getKey());
              String path = at + entry.getKey();
              if (entry.getValue() instanceof ObjectNode was && now instanceof ObjectNode is) {
                add(path + ".", was, is, paths);
              } else if (!entry.getValue().equals(now)) {
                paths.add(path);
              }
            });
    after.propertyNames().stream()
        .filter(name -> !before.has(name))
        .forEach(name -> paths.add(at + name));
  }
}
