package dev.gantrywright.link;

import java.util.List;
import java.util.Locale;

/** Words at the beginning of a line, in any case. */
final class Words {
  private Words() {}

  /**
   * What follows the first word of the list that the text begins with, or null when it begins with
   * none. A word ends where no letter or digit follows.
   */
  static String after(String text, List<String> words) {
    String lower = text.toLowerCase(Locale.ROOT);
    for (String word : words) {
      String w = word.toLowerCase(Locale.ROOT);
      boolean ends =
          lower.length() == w.length()
              || (lower.length() > w.length()
                  && !Character.isLetterOrDigit(lower.charAt(w.length())));
      if (!w.isEmpty() && ends && lower.startsWith(w)) {
        return text.substring(w.length());
      }
    }
    return null;
  }

  static boolean begins(String text, List<String> words) {
    return after(text, words) != null;
  }
}
