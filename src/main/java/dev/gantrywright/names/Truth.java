package dev.gantrywright.names;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The pairs of words by which firmware says yes and no. */
final class Truth {
  /** True first; common practice, no published source. */
  private static final List<List<String>> PAIRS =
      List.of(
          List.of("true", "false"),
          List.of("1", "0"),
          List.of("yes", "no"),
          List.of("on", "off"),
          List.of("high", "low"),
          List.of("enabled", "disabled"),
          List.of("enable", "disable"),
          List.of("inverted", "normal"),
          List.of("reversed", "normal"),
          List.of("reverse", "forward"),
          List.of("-1", "1"),
          List.of("-1", "+1"));

  private static final Map<String, Boolean> SAYS = says();

  private static final Pattern SUFFIXED = Pattern.compile("^(\\d+)[uUlL]+$");

  private Truth() {}

  /** The pair that a text belongs to, as positions say; empty where it is none of them. */
  static Optional<Boolean> of(String text) {
    return Optional.ofNullable(SAYS.get(bare(text).toLowerCase(Locale.ROOT)));
  }

  /** The first pair that has a word decides. */
  private static Map<String, Boolean> says() {
    Map<String, Boolean> says = new HashMap<>();
    for (List<String> pair : PAIRS) {
      says.putIfAbsent(pair.get(0), true);
      says.putIfAbsent(pair.get(1), false);
    }
    return says;
  }

  /** The other word of a pair in the style of the present one, or the present one. */
  static Optional<String> like(String current, boolean wanted, boolean sign) {
    String plain = bare(current).toLowerCase(Locale.ROOT);
    for (List<String> pair : PAIRS) {
      boolean signs = pair.get(0).equals("-1");
      if (!pair.contains(plain) || signs != sign) {
        continue;
      }
      String word = pair.get(wanted ? 0 : 1);
      return Optional.of(wrap(current, cased(word, bare(current))));
    }
    return Optional.empty();
  }

  private static String cased(String word, String current) {
    if (current.equals(current.toUpperCase(Locale.ROOT))) {
      return word.toUpperCase(Locale.ROOT);
    }
    if (Character.isUpperCase(current.charAt(0))) {
      return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
    return word;
  }

  private static String bare(String text) {
    String inner = Parens.off(text);
    boolean number = !inner.isEmpty() && Character.isDigit(inner.charAt(0));
    return number ? SUFFIXED.matcher(inner).replaceAll("$1") : inner;
  }

  private static String wrap(String current, String word) {
    return current.strip().startsWith("(") ? "(" + word + ")" : word;
  }
}
