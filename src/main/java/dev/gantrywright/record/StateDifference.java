package dev.gantrywright.record;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** The values in which two profiles differ, whether they are two states of one printer or two. */
public final class StateDifference {
  private StateDifference() {}

  /**
   * One value.
   *
   * @param path of the field; waivers, and keys that this version does not know, have theirs too
   * @param left empty where the first profile leaves it open
   * @param right empty where the second does
   */
  public record Row(String path, Optional<JsonNode> left, Optional<JsonNode> right) {}

  /** Every value that differs, in the order of the file format; a list is one value. */
  public static List<Row> of(PrinterProfile left, PrinterProfile right) {
    List<Row> rows = new ArrayList<>();
    compare("", ProfileValues.tree(left), ProfileValues.tree(right), rows);
    return rows;
  }

  private static void compare(String at, JsonNode left, JsonNode right, List<Row> rows) {
    if (!isObject(left) && !isObject(right)) {
      if (left == null || !left.equals(right)) {
        rows.add(new Row(at, Optional.ofNullable(left), Optional.ofNullable(right)));
      }
      return;
    }
    if (left != null && right != null && !(isObject(left) && isObject(right))) {
      rows.add(new Row(at, Optional.of(left), Optional.of(right)));
      return;
    }
    Set<String> keys = new LinkedHashSet<>();
    names(left, keys);
    names(right, keys);
    for (String key : keys) {
      compare(at.isEmpty() ? key : at + "." + key, get(left, key), get(right, key), rows);
    }
  }

  private static boolean isObject(JsonNode node) {
    return node != null && node.isObject();
  }

  private static void names(JsonNode node, Set<String> into) {
    if (isObject(node)) {
      into.addAll(node.propertyNames());
    }
  }

  private static JsonNode get(JsonNode node, String key) {
    return isObject(node) ? node.get(key) : null;
  }
}
