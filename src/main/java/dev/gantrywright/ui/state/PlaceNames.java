package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import java.util.List;
import java.util.Locale;

/** Field paths in the words of the bench: "X axis", "x min", "X steps/mm". */
public final class PlaceNames {
  private PlaceNames() {}

  /** Title of a part by its id. */
  public static String part(String id) {
    int dot = id.indexOf('.');
    if (dot < 0) {
      return Texts.orElse("part." + id, id);
    }
    String name = id.substring(dot + 1);
    return switch (id.substring(0, dot)) {
      case "axes" -> axis(name);
      case "endstops" -> endstop(name);
      default -> Texts.orElse("heater." + name, name);
    };
  }

  private static String axis(String name) {
    return name.startsWith("e")
        ? Texts.of("part.extruder") + (name.length() > 1 ? " " + name.substring(1) : "")
        : Texts.of("part.axis", name.toUpperCase(Locale.ROOT));
  }

  /** {@code xMin} as "x min". */
  public static String endstop(String name) {
    StringBuilder words = new StringBuilder();
    for (char c : name.toCharArray()) {
      words.append(c >= 'A' && c <= 'Z' ? " " : "").append(Character.toLowerCase(c));
    }
    return words.toString();
  }

  /** A field with its place, "X steps/mm"; a path that is no field stays as it is. */
  public static String field(String path) {
    String label = Fields.at(path).map(Field::label).orElse(path);
    String[] keys = path.split("\\.");
    if (keys.length < 3) {
      boolean whole = List.of("axes", "endstops", "heaters").contains(keys[0]) && keys.length == 2;
      return whole ? part(path) : label;
    }
    String small = label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    return switch (keys[0]) {
      case "axes" -> keys[1].toUpperCase(Locale.ROOT) + " " + small;
      case "endstops" -> endstop(keys[1]) + " " + small;
      case "heaters" -> part("heaters." + keys[1]) + " " + small;
      default -> label;
    };
  }
}
