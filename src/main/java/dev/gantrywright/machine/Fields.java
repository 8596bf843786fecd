package dev.gantrywright.machine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The one table of profile fields; forms, checks of range, schema and help read it. */
public final class Fields {
  private static final List<Field> ALL = read();
  private static final Map<String, Field> BY_PATTERN = byPattern();

  private Fields() {}

  /** Every field, in the order of the file format. */
  public static List<Field> all() {
    return ALL;
  }

  /** The field at a concrete path such as {@code axes.x.stepsPerMm}. */
  public static Optional<Field> at(String path) {
    return Optional.ofNullable(BY_PATTERN.get(pattern(path)));
  }

  /** The path with the name of axis, axis end or heater replaced by a star. */
  static String pattern(String path) {
    for (String group : List.of("axes.", "endstops.", "heaters.")) {
      if (path.startsWith(group)) {
        int dot = path.indexOf('.', group.length());
        return dot < 0 ? path : group + "*" + path.substring(dot);
      }
    }
    return path;
  }

  private static Map<String, Field> byPattern() {
    Map<String, Field> map = new HashMap<>();
    ALL.forEach(field -> map.put(field.path(), field));
    return Map.copyOf(map);
  }

  private static List<Field> read() {
    try (InputStream in = Fields.class.getResourceAsStream("fields.json")) {
      return FieldTable.read(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
