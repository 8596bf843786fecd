package dev.gantrywright.machine;

import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Finds values outside the range that the field table gives. */
final class Ranges {
  /**
   * @param path of the value
   * @param text what is wrong and what to give
   */
  record Outside(String path, String text) {}

  private Ranges() {}

  /** The first value outside its range, or null. */
  static Outside first(String prefix, JsonNode node) {
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        Outside found =
            first(
                prefix.isEmpty() ? entry.getKey() : prefix + "." + entry.getKey(),
                entry.getValue());
        if (found != null) {
          return found;
        }
      }
    }
    return node.isNumber() ? Fields.at(prefix).map(f -> judge(f, prefix, node)).orElse(null) : null;
  }

  private static Outside judge(Field field, String path, JsonNode value) {
    double number = value.asDouble();
    boolean low = field.minimum() != null && number < field.minimum();
    boolean high = field.maximum() != null && number > field.maximum();
    if (!low && !high) {
      return null;
    }
    String unit = field.unit() == null ? "" : " " + field.unit();
    return new Outside(
        path,
        "found "
            + value
            + unit
            + "; give "
            + (low
                ? "at least " + Numbers.plain(field.minimum())
                : "at most " + Numbers.plain(field.maximum()))
            + unit);
  }
}
