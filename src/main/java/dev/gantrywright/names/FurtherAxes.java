package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the axes of a folder beside x, y, z and e: rotary axes A, B, C, parallel axes U, V, W
 * (their letters after ISO 6983-1), and extruders E1, E2, E3. A letter alone says little, so it
 * counts only where several names are the same as one of X, Y or Z but for it, or comments list it
 * behind them.
 */
final class FurtherAxes {
  private static final String LETTERS = "abcuvw";
  private static final String TWINS = "xyz";
  private static final int FEWEST_NAMES = 2;
  private static final Pattern LISTED =
      Pattern.compile("\\bx\\W{1,4}y\\W{1,4}z((?:\\W{1,4}(?:[abcuvwe]|e[0-3])\\b){1,6})");
  private static final Pattern ONE = Pattern.compile("[abcuvw]|e[1-3]");

  private final Set<String> names;
  private final Map<String, Integer> counts = new TreeMap<>();

  private FurtherAxes(Set<String> names) {
    this.names = names;
  }

  /** The axes that names and comments speak of. */
  static Axes of(Iterable<String> names, Iterable<String> comments) {
    Set<String> all = new HashSet<>();
    names.forEach(all::add);
    FurtherAxes further = new FurtherAxes(all);
    all.forEach(further::count);
    for (String comment : new HashSet<>(list(comments))) {
      further.listed(comment);
    }
    List<String> found = new ArrayList<>();
    further.counts.forEach(
        (axis, count) -> {
          if (count >= FEWEST_NAMES) {
            found.add(axis);
          }
        });
    return new Axes(found);
  }

  private static List<String> list(Iterable<String> texts) {
    List<String> all = new ArrayList<>();
    texts.forEach(all::add);
    return all;
  }

  private void count(String name) {
    for (int i = 0; i < name.length(); i++) {
      char letter = Character.toLowerCase(name.charAt(i));
      if (LETTERS.indexOf(letter) >= 0 && alone(name, i, i + 1) && twin(name, i)) {
        counts.merge(String.valueOf(letter), 1, Integer::sum);
      }
      boolean numbered = letter == 'e' && i + 1 < name.length();
      if (numbered
          && name.charAt(i + 1) >= '1'
          && name.charAt(i + 1) <= '3'
          && alone(name, i, i + 2)
          && first(name, i)) {
        counts.merge("e" + name.charAt(i + 1), 1, Integer::sum);
      }
    }
  }

  /** Whether a piece of a name is a word of its own. */
  private static boolean alone(String name, int from, int to) {
    boolean starts =
        from == 0
            || !Character.isLetterOrDigit(name.charAt(from - 1))
            || Character.isUpperCase(name.charAt(from))
                && Character.isLowerCase(name.charAt(from - 1));
    boolean ends =
        to == name.length()
            || !Character.isLetterOrDigit(name.charAt(to))
            || Character.isUpperCase(name.charAt(to)) && to - from == 1 && camel(name, to);
    return starts && ends;
  }

  private static boolean camel(String name, int at) {
    return at + 1 < name.length() && Character.isLowerCase(name.charAt(at + 1));
  }

  private boolean twin(String name, int at) {
    for (int i = 0; i < TWINS.length(); i++) {
      char like = TWINS.charAt(i);
      char letter = Character.isUpperCase(name.charAt(at)) ? Character.toUpperCase(like) : like;
      if (names.contains(name.substring(0, at) + letter + name.substring(at + 1))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the same name stands for the first extruder too. */
  private boolean first(String name, int at) {
    String before = name.substring(0, at + 1);
    String behind = name.substring(at + 2);
    return names.contains(before + "0" + behind) || names.contains(before + behind);
  }

  private void listed(String comment) {
    if (comment.indexOf('x') < 0 && comment.indexOf('X') < 0) {
      return;
    }
    Matcher run = LISTED.matcher(comment.toLowerCase(Locale.ROOT));
    while (run.find()) {
      Matcher each = ONE.matcher(run.group(1));
      while (each.find()) {
        counts.merge(each.group(), 1, Integer::sum);
      }
    }
  }
}
