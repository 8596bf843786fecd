package dev.gantrywright.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One row of a data file, read with its place, so that a bad row is named exactly. */
record Row(String place, Map<?, ?> values) {

  /** The rows under the key of a data file that lies beside this class. */
  static List<Row> all(String file, String key) {
    try (InputStream in = Row.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + ": not among the program's data files");
      }
      List<Row> rows = new ArrayList<>();
      for (Object row : list(PlainJson.object(in).get(key))) {
        rows.add(new Row(file + ", " + key + " row " + (rows.size() + 1), (Map<?, ?>) row));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new IllegalStateException(file + ": " + e.getMessage(), e);
    }
  }

  private static List<?> list(Object value) {
    return value instanceof List<?> list ? list : List.of();
  }

  boolean has(String key) {
    return values.containsKey(key);
  }

  String text(String key) {
    return String.valueOf(present(key));
  }

  String text(String key, String otherwise) {
    return has(key) ? text(key) : otherwise;
  }

  double number(String key) {
    return number(key, present(key));
  }

  double number(String key, double otherwise) {
    return has(key) ? number(key) : otherwise;
  }

  private double number(String key, Object value) {
    if (!(value instanceof Number number)) {
      throw bad(key, "a number", value);
    }
    return number.doubleValue();
  }

  /** A whole number, or a text such as 0x08000000. */
  long whole(String key) {
    return whole(key, present(key));
  }

  long whole(String key, long otherwise) {
    return has(key) ? whole(key) : otherwise;
  }

  private long whole(String key, Object value) {
    if (value instanceof Long whole) {
      return whole;
    }
    try {
      return Long.decode(String.valueOf(value));
    } catch (NumberFormatException e) {
      throw bad(key, "a whole number or hex text", value);
    }
  }

  boolean flag(String key, boolean otherwise) {
    return has(key) ? Boolean.TRUE.equals(values.get(key)) : otherwise;
  }

  List<Long> wholes(String key) {
    List<Long> all = new ArrayList<>();
    list(values.get(key)).forEach(value -> all.add(whole(key, value)));
    return List.copyOf(all);
  }

  List<Double> numbers(String key) {
    List<Double> all = new ArrayList<>();
    list(values.get(key)).forEach(value -> all.add(number(key, value)));
    return List.copyOf(all);
  }

  List<String> texts(String key) {
    List<String> all = new ArrayList<>();
    list(values.get(key)).forEach(value -> all.add(String.valueOf(value)));
    return List.copyOf(all);
  }

  List<Row> rows(String key) {
    List<Row> rows = new ArrayList<>();
    list(values.get(key)).forEach(row -> rows.add(new Row(place + ", " + key, (Map<?, ?>) row)));
    return List.copyOf(rows);
  }

  Row child(String key) {
    return new Row(place + ", " + key, (Map<?, ?>) present(key));
  }

  /** The members of an object of numbers, in file order. */
  Map<String, Double> table(String key) {
    Map<String, Double> table = new LinkedHashMap<>();
    if (values.get(key) instanceof Map<?, ?> members) {
      members.forEach((name, value) -> table.put(String.valueOf(name), number(key, value)));
    }
    return table;
  }

  private Object present(String key) {
    Object value = values.get(key);
    if (value == null) {
      throw new IllegalStateException(place + ": lacks " + key);
    }
    return value;
  }

  private IllegalStateException bad(String key, String wanted, Object value) {
    return new IllegalStateException(place + ": " + key + " wants " + wanted + ", has " + value);
  }
}
