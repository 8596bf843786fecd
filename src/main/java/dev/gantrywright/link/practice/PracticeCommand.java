package dev.gantrywright.link.practice;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A command word with its letter-and-number parameters.
 *
 * @param word such as {@code M119}
 * @param rest text that is no letter and number
 */
record PracticeCommand(String word, Map<Character, Double> values, String rest) {
  private static final Pattern FRAME =
      Pattern.compile("(?i)^\\s*(?:N\\d+\\s*)?([A-Z]+\\d*)\\b([^*;]*)(?:\\*\\d+)?\\s*(?:;.*)?$");
  private static final Pattern VALUE =
      Pattern.compile("\\b([A-Z])\\s*(-?\\d+(?:\\.\\d*)?|-?\\.\\d+)");

  static Optional<PracticeCommand> read(String raw) {
    Matcher m = FRAME.matcher(raw);
    if (!m.matches()) {
      return Optional.empty();
    }
    Map<Character, Double> values = new HashMap<>();
    Matcher v = VALUE.matcher(m.group(2).toUpperCase(Locale.ROOT));
    while (v.find()) {
      values.put(v.group(1).charAt(0), Double.parseDouble(v.group(2)));
    }
    String rest = v.reset().replaceAll("").strip();
    return Optional.of(new PracticeCommand(m.group(1).toUpperCase(Locale.ROOT), values, rest));
  }

  Optional<Double> value(char letter) {
    return Optional.ofNullable(values.get(letter));
  }
}
