package dev.gantrywright.rules;

import java.util.Locale;
import java.util.regex.Pattern;

/** Says a field path in words: {@code axes.z.driver.current} is "Z axis, driver current". */
final class Place {
  private static final Pattern HUMP = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])");

  private Place() {}

  static String of(String path) {
    if (path.indexOf(':') >= 0) {
      return path;
    }
    String[] parts = path.split("\\.");
    if (parts.length < 2) {
      return words(path);
    }
    return switch (parts[0]) {
      case "axes" -> parts[1].toUpperCase(Locale.ROOT) + " axis" + rest(parts, 2);
      case "endstops" -> axisEnd(parts[1]) + " endstop" + rest(parts, 2);
      case "heaters" -> words(parts[1]) + " heater" + rest(parts, 2);
      default -> words(parts[0]) + rest(parts, 1);
    };
  }

  private static String rest(String[] parts, int from) {
    StringBuilder text = new StringBuilder();
    for (int at = from; at < parts.length; at++) {
      text.append(at == from ? ", " : " ").append(words(parts[at]));
    }
    return text.toString();
  }

  private static String axisEnd(String name) {
    String words = words(name);
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String words(String name) {
    return HUMP.matcher(name).replaceAll(" ").toLowerCase(Locale.ROOT);
  }
}
