package dev.gantrywright.link;

import java.util.List;

/** Words at the beginning of a line, in any case. Asked of every line, so it makes no copies. */
final class Words {
  private Words() {}

  /**
   * What follows the first word of the list that the text begins with, or null when it begins with
   * none. A word ends where no letter or digit follows.
   */
  static String after(String text, List<String> words) {
    int end = end(text, words);
    return end < 0 ? null : text.substring(end);
  }

  static boolean begins(String text, List<String> words) {
    return end(text, words) >= 0;
  }

  private static int end(String text, List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      int length = word.length();
      boolean ends =
          text.length() == length
              || (text.length() > length && !Character.isLetterOrDigit(text.charAt(length)));
      if (length > 0 && ends && text.regionMatches(true, 0, word, 0, length)) {
        return length;
      }
    }
    return -1;
  }
}
