package dev.gantrywright.rules;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds what somebody probably meant: Damerau's edits, optimal string alignment. */
public final class NearMiss {
  private static final Pattern NOT_PLAIN = Pattern.compile("[^a-z0-9]");

  private NearMiss() {}

  /**
   * The closest of the known names, where it differs by case, punctuation or at most two edits in
   * six or more letters (one in fewer); none where two are equally close.
   */
  public static Optional<String> of(String given, Collection<String> names) {
    String plain = plain(given);
    int allowed = plain.length() >= 6 ? 2 : 1;
    String best = null;
    int least = allowed + 1;
    for (String name : names) {
      int edits = distance(plain, plain(name));
      if (edits < least) {
        best = name;
        least = edits;
      } else if (edits == least) {
        best = null;
      }
    }
    return Optional.ofNullable(best);
  }

  private static String plain(String name) {
    return NOT_PLAIN.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int swap = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + swap);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
