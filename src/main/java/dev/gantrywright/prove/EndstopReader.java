package dev.gantrywright.prove;

import dev.gantrywright.link.Dialect;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads endstop states out of whatever a firmware answers: {@code name: state}, {@code name =
 * state}, {@code name:0}, one or several on a line, in any case. What is no known state word is
 * passed over.
 */
public final class EndstopReader {
  private static final Pattern VALUE =
      Pattern.compile("[:=]\\s*([\\p{L}\\p{N}]+)(?![\\p{L}\\p{N}.])");

  private static final Pattern OTHERS = Pattern.compile("[:=,;|]");

  /** Longest name taken, in characters: what is longer is prose. */
  private static final int LONGEST_NAME = 40;

  private final Map<String, Boolean> states = new HashMap<>();

  /**
   * @throws IllegalArgumentException when a word is in both lists
   */
  public EndstopReader(Dialect dialect) {
    dialect.openWords().forEach(w -> states.put(w.toLowerCase(Locale.ROOT), false));
    for (String word : dialect.triggeredWords()) {
      if (Boolean.FALSE.equals(states.put(word.toLowerCase(Locale.ROOT), true))) {
        throw new IllegalArgumentException(
            "'"
                + word
                + "' stands in link.triggeredWords and in link.openWords; take it out of one");
      }
    }
  }

  /** All states in a reply, in the order in which they stand. Never fails. */
  public List<EndstopReading> read(List<String> lines) {
    List<EndstopReading> readings = new ArrayList<>();
    lines.forEach(line -> readLine(line, readings));
    return List.copyOf(readings);
  }

  private void readLine(String line, List<EndstopReading> readings) {
    Matcher m = VALUE.matcher(line);
    int from = 0;
    int at = 0;
    while (m.find(at)) {
      Boolean state = states.get(m.group(1).toLowerCase(Locale.ROOT));
      if (state == null) {
        // A heading such as "states:": the name begins after it.
        from = m.start() + 1;
        at = from;
        continue;
      }
      String name = trimmed(line.substring(from, m.start()));
      if (!name.isEmpty() && name.length() <= LONGEST_NAME) {
        readings.add(new EndstopReading(name, state, m.group(1)));
      }
      from = m.end();
      at = from;
    }
  }

  /** The last words before the separator: what follows other values, commas and signs. */
  private static String trimmed(String text) {
    String name = text;
    if (OTHERS.matcher(text).find()) {
      name = text.replaceFirst("^.*[:=]\\s*\\S*", "").replaceFirst("^.*[,;|]", "");
    }
    int start = 0;
    int end = name.length();
    while (start < end && !Character.isLetterOrDigit(name.charAt(start))) {
      start++;
    }
    while (end > start && Character.isWhitespace(name.charAt(end - 1))) {
      end--;
    }
    return name.substring(start, end);
  }
}
