package dev.gantrywright.prove;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads temperatures out of a reply: {@code name = 21.5}, {@code T:21.5}, several on a line. */
public final class TemperatureReader {
  private static final Pattern VALUE =
      Pattern.compile(
          "([\\p{L}][\\p{L}\\p{N}_]*)\\s*[:=]\\s*(-?\\d{1,4}(?:\\.\\d+)?)(?![\\p{N}.])");

  private TemperatureReader() {}

  /** Reported name to degrees Celsius; of two values with one name the first. Never fails. */
  public static Map<String, Double> read(List<String> lines) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (String line : lines) {
      Matcher m = VALUE.matcher(line);
      while (m.find()) {
        values.putIfAbsent(m.group(1), Double.parseDouble(m.group(2)));
      }
    }
    return values;
  }
}
