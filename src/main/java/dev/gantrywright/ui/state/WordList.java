package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lists and maps as one types them into a field: words with quotes, {@code name=value} lines. */
public final class WordList {
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|(\\S+)");

  private WordList() {}

  /** Words apart by blanks; a word in double quotes may hold blanks. */
  public static List<String> words(String typed) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(typed);
    while (matcher.find()) {
      words.add(
          matcher.group(1) != null
              ? matcher.group(1).replaceAll("\\\\(.)", "$1")
              : matcher.group(2));
    }
    return words;
  }

  /** The same words as they would be typed. */
  public static String typed(List<String> words) {
    return String.join(" ", words.stream().map(WordList::quoted).toList());
  }

  private static String quoted(String word) {
    boolean plain =
        !word.isEmpty() && !word.startsWith("\"") && word.chars().noneMatch(WordList::blank);
    return plain ? word : "\"" + word.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  /** A blank as the pattern's {@code \s} understands it. */
  private static boolean blank(int c) {
    return c == ' ' || c >= '\t' && c <= '\r';
  }

  /** One {@code name=value} a line; a line without the sign gives an empty value. */
  public static Map<String, String> map(String typed) {
    Map<String, String> map = new LinkedHashMap<>();
    for (String line : typed.split("\\R")) {
      int sign = line.indexOf('=');
      String name = (sign < 0 ? line : line.substring(0, sign)).strip();
      if (!name.isEmpty()) {
        map.put(name, sign < 0 ? "" : line.substring(sign + 1).strip());
      }
    }
    return map;
  }

  /** The same map as it would be typed. */
  public static String typed(Map<String, String> map) {
    return String.join(
        "\n", map.entrySet().stream().map(e -> e.getKey() + "=" + e.getValue()).toList());
  }
}
