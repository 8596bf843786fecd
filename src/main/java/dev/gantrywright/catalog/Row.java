package dev.gantrywright.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One row of a data file, read with its place, so that a bad row is named exactly. */
record Row(String place, JsonNode node) {

  /** The rows under the key of a data file that lies beside this class. */
  static List<Row> all(String file, String key) {
    try (InputStream in = Row.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + ": not among the program's data files");
      }
      List<Row> rows = new ArrayList<>();
      for (JsonNode node : JsonMapper.shared().readTree(in).path(key)) {
        rows.add(new Row(file + ", " + key + " row " + (rows.size() + 1), node));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new IllegalStateException(file + ": " + e.getMessage(), e);
    }
  }

  boolean has(String key) {
    return node.has(key);
  }

  String text(String key) {
    return present(key).asString();
  }

  String text(String key, String otherwise) {
    return has(key) ? text(key) : otherwise;
  }

  double number(String key) {
    JsonNode value = present(key);
    if (!value.isNumber()) {
      throw bad(key, "a number", value);
    }
    return value.doubleValue();
  }

  double number(String key, double otherwise) {
    return has(key) ? number(key) : otherwise;
  }

  /** A whole number, or a text such as 0x08000000. */
  long whole(String key) {
    return whole(key, present(key));
  }

  long whole(String key, long otherwise) {
    return has(key) ? whole(key) : otherwise;
  }

  private long whole(String key, JsonNode value) {
    if (value.isIntegralNumber()) {
      return value.longValue();
    }
    try {
      return Long.decode(value.asString());
    } catch (NumberFormatException e) {
      throw bad(key, "a whole number or hex text", value);
    }
  }

  boolean flag(String key, boolean otherwise) {
    return has(key) ? node.get(key).booleanValue() : otherwise;
  }

  List<Long> wholes(String key) {
    List<Long> values = new ArrayList<>();
    node.path(key).forEach(value -> values.add(whole(key, value)));
    return List.copyOf(values);
  }

  List<Double> numbers(String key) {
    List<Double> values = new ArrayList<>();
    node.path(key).forEach(value -> values.add(value.doubleValue()));
    return List.copyOf(values);
  }

  List<String> texts(String key) {
    List<String> values = new ArrayList<>();
    node.path(key).forEach(value -> values.add(value.asString()));
    return List.copyOf(values);
  }

  List<Row> rows(String key) {
    List<Row> rows = new ArrayList<>();
    node.path(key).forEach(child -> rows.add(new Row(place + ", " + key, child)));
    return List.copyOf(rows);
  }

  Row child(String key) {
    return new Row(place + ", " + key, present(key));
  }

  /** The members of an object of numbers, in file order. */
  Map<String, Double> table(String key) {
    Map<String, Double> table = new LinkedHashMap<>();
    node.path(key).properties().forEach(e -> table.put(e.getKey(), e.getValue().doubleValue()));
    return table;
  }

  private JsonNode present(String key) {
    JsonNode value = node.get(key);
    if (value == null || value.isNull()) {
      throw new IllegalStateException(place + ": lacks " + key);
    }
    return value;
  }

  private IllegalStateException bad(String key, String wanted, JsonNode value) {
    return new IllegalStateException(place + ": " + key + " wants " + wanted + ", has " + value);
  }
}
