package dev.gantrywright.catalog;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds a part by the number on its package: any case, with package and temperature letters. */
final class PartNumbers {
  private static final Pattern SPACE = Pattern.compile("\\s+");

  private PartNumbers() {}

  /**
   * The part that the number names, if the catalogue has it. The longest part number that the text
   * starts with wins, and what follows must be a suffix of that family.
   */
  static Optional<Mcu> find(List<Mcu> parts, String number) {
    String wanted = SPACE.matcher(number).replaceAll("").toUpperCase(Locale.ROOT);
    Mcu best = null;
    int bestLength = 0;
    for (Mcu part : parts) {
      int length = longestMatch(part, wanted);
      if (length > bestLength) {
        best = part;
        bestLength = length;
      }
    }
    return Optional.ofNullable(best);
  }

  private static int longestMatch(Mcu part, String wanted) {
    int length = match(part, part.part(), wanted);
    for (String alias : part.aliases()) {
      length = Math.max(length, match(part, alias, wanted));
    }
    return length;
  }

  private static int match(Mcu part, String name, String wanted) {
    if (!wanted.regionMatches(true, 0, name, 0, name.length())) {
      return 0;
    }
    String rest = wanted.substring(name.length());
    boolean fits = rest.isEmpty() || part.familyFacts().suffix().matcher(rest).matches();
    return fits ? name.length() : 0;
  }
}
