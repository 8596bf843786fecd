package dev.gantrywright.prove;

import dev.gantrywright.link.Dialect;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the settings that a firmware reports as letter-coded words, such as {@code X80.00 Y80.00}
 * after a command or a label that says what they are.
 */
public final class StoredSettings {
  private static final Pattern WORD =
      Pattern.compile(
          "(?<![A-Za-z0-9.])([A-Za-z])\\s*[:=]?\\s*(-?\\d+(?:\\.(\\d*))?)(?![A-Za-z0-9])");

  /**
   * One value.
   *
   * @param value as reported, in the firmware's unit
   * @param decimals digits after the point that it was reported with
   */
  public record Value(double value, int decimals) {}

  private final Map<String, List<String>> words;

  public StoredSettings(Dialect dialect) {
    this.words = dialect.settingWords();
  }

  /**
   * Field path such as {@code axes.x.stepsPerMm} to value; of two reports of one field the last.
   */
  public Map<String, Value> read(List<String> lines) {
    Map<String, Value> values = new LinkedHashMap<>();
    for (String line : lines) {
      String field = null;
      int from = -1;
      int longest = 0;
      for (Map.Entry<String, List<String>> entry : words.entrySet()) {
        for (String word : entry.getValue()) {
          int end = endOf(word, line);
          if (end >= 0 && word.length() > longest) {
            longest = word.length();
            field = entry.getKey();
            from = end;
          }
        }
      }
      if (field != null) {
        axes(line.substring(from), field, values);
      }
    }
    return values;
  }

  private static void axes(String rest, String field, Map<String, Value> values) {
    Matcher m = WORD.matcher(rest);
    while (m.find()) {
      int decimals = m.group(3) == null ? 0 : m.group(3).length();
      values.put(
          "axes." + m.group(1).toLowerCase(Locale.ROOT) + "." + field,
          new Value(Double.parseDouble(m.group(2)), decimals));
    }
  }

  /** Where the word ends in the line, when it stands there as a whole word in any case; else -1. */
  private static int endOf(String word, String line) {
    Matcher m =
        Pattern.compile("(?i)(?<![A-Za-z0-9])" + Pattern.quote(word) + "(?![A-Za-z0-9])")
            .matcher(line);
    return m.find() ? m.end() : -1;
  }
}
