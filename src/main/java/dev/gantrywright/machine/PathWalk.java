package dev.gantrywright.machine;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads and replaces one value of a profile by going down its path, record by record. A whole tree
 * of the profile for one value takes a hundred times as long.
 */
final class PathWalk {
  private PathWalk() {}

  /** The value at a path as the profile's tree has it; empty where it has none. */
  static Optional<JsonNode> get(PrinterProfile profile, String path) {
    Object at = profile;
    Shape shape = Shape.PROFILE;
    int from = 0;
    while (true) {
      String key = key(path, from);
      from += key.length() + 1;
      Integer index = shape.index().get(key);
      if (index == null) {
        Map<?, ?> more = (Map<?, ?>) shape.read(at, shape.components().size());
        return under(node(more.get(key)), path, from);
      }
      Shape.Part part = shape.components().get(index);
      at = shape.read(at, index);
      if (part.kind() == Shape.Kind.RECORD_MAP && from < path.length()) {
        key = key(path, from);
        from += key.length() + 1;
        at = ((Map<?, ?>) at).get(key);
      }
      boolean record = part.kind() == Shape.Kind.RECORD || part.kind() == Shape.Kind.RECORD_MAP;
      if (at == null || !record || from >= path.length()) {
        return under(node(at), path, from);
      }
      shape = part.shape();
    }
  }

  private static String key(String path, int from) {
    int dot = path.indexOf('.', from);
    return path.substring(from, dot < 0 ? path.length() : dot);
  }

  private static Optional<JsonNode> under(JsonNode node, String path, int from) {
    JsonNode at = node;
    int next = from;
    while (at != null && next < path.length()) {
      String key = key(path, next);
      next += key.length() + 1;
      at = at.get(key);
    }
    return Optional.ofNullable(at);
  }

  /** As the tree has it: nothing stands for null and for what is empty. */
  private static JsonNode node(Object value) {
    if (value == null) {
      return null;
    }
    if (value instanceof Double number) {
      return ProfileFormat.plain(number)
          ? JsonNodeFactory.instance.numberNode(number.longValue())
          : JsonNodeFactory.instance.numberNode(number.doubleValue());
    }
    if (value instanceof String text) {
      return JsonNodeFactory.instance.stringNode(text);
    }
    if (value instanceof Boolean flag) {
      return JsonNodeFactory.instance.booleanNode(flag);
    }
    JsonNode node = ProfileFormat.MAPPER.valueToTree(value);
    if (node instanceof ObjectNode object) {
      TreeText.pruned(object);
    }
    return node.isNull() || node.isContainer() && node.isEmpty() ? null : node;
  }

  /**
   * The profile with one number, flag, text or word replaced; null where that takes more than going
   * down to it, such as a section that is not there yet, or where the field does not take the
   * value.
   */
  static PrinterProfile with(PrinterProfile profile, String path, JsonNode value) {
    return value == null || value.isNull() || value.isContainer()
        ? null
        : (PrinterProfile) with(profile, Shape.PROFILE, path, 0, value);
  }

  private static Object with(Object record, Shape shape, String path, int from, JsonNode value) {
    String key = key(path, from);
    int next = from + key.length() + 1;
    Integer index = shape.index().get(key);
    if (index == null) {
      return null;
    }
    Shape.Part part = shape.components().get(index);
    Object held = shape.read(record, index);
    Object changed =
        switch (part.kind()) {
          case RECORD -> next < path.length() ? with(held, part.shape(), path, next, value) : null;
          case RECORD_MAP -> entry((Map<?, ?>) held, part.shape(), path, next, value);
          case DECIMAL, WHOLE, LONG, FLAG, TEXT, WORD ->
              next < path.length() ? null : leaf(value, shape.readers().get(index).getReturnType());
          case TEXTS, TEXT_MAP, RECORDS -> null;
        };
    if (changed == null) {
      return null;
    }
    Object[] values = new Object[shape.readers().size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = i == index ? changed : shape.read(record, i);
    }
    return shape.record(values);
  }

  private static Object entry(Map<?, ?> map, Shape shape, String path, int from, JsonNode value) {
    String key = from < path.length() ? key(path, from) : "";
    int next = from + key.length() + 1;
    Object held = map.get(key);
    Object changed =
        held == null || next >= path.length() ? null : with(held, shape, path, next, value);
    if (changed == null) {
      return null;
    }
    Map<Object, Object> copy = new LinkedHashMap<>(map);
    copy.put(key, changed);
    return copy;
  }

  private static Object leaf(JsonNode value, Class<?> type) {
    try {
      return ProfileFormat.MAPPER.treeToValue(value, type);
    } catch (JacksonException notTaken) {
      return null;
    }
  }
}
