package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Names that are easily taken for one another. */
final class NearMiss {
  private NearMiss() {}

  /** One line for each other name that equals this one or reads almost like it. */
  static List<String> notes(String name, List<String> names) {
    List<String> notes = new ArrayList<>();
    int same = 0;
    for (String other : names) {
      if (other.equals(name)) {
        same++;
      } else if (other.equalsIgnoreCase(name)) {
        notes.add("differs from " + other + " in case only");
      } else if (distance(name, other) == 1 || extended(name, other)) {
        notes.add("reads almost like " + other);
      }
    }
    if (same > 1) {
      notes.add("stands " + same + " times");
    }
    return notes;
  }

  private static boolean extended(String a, String b) {
    int shorter = Math.min(a.length(), b.length());
    return Math.abs(a.length() - b.length()) == 1
        && a.substring(0, shorter).equalsIgnoreCase(b.substring(0, shorter));
  }

  /**
   * Letters to change, add or take away to get from one name to the other (V. Levenshtein, 1965).
   */
  static int distance(String a, String b) {
    String left = a.toLowerCase(Locale.ROOT);
    String right = b.toLowerCase(Locale.ROOT);
    int[] before = new int[right.length() + 1];
    for (int j = 0; j <= right.length(); j++) {
      before[j] = j;
    }
    for (int i = 1; i <= left.length(); i++) {
      int[] now = new int[right.length() + 1];
      now[0] = i;
      for (int j = 1; j <= right.length(); j++) {
        int change = left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1;
        now[j] = Math.min(Math.min(now[j - 1], before[j]) + 1, before[j - 1] + change);
      }
      before = now;
    }
    return before[right.length()];
  }
}
