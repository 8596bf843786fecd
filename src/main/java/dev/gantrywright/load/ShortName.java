package dev.gantrywright.load;

import java.util.Locale;
import java.util.Optional;

/**
 * Names of the 8.3 form, the only one that simple loaders read.
 *
 * <p>Source: Microsoft FAT specification (fatgen103), short names: one to eight and up to three
 * characters, stored in 11 bytes; letters, digits and {@code $ % ' - _ @ ~ ` ! ( ) { } ^ # &}.
 */
public final class ShortName {
  /** Bytes of a short name in a directory entry. */
  public static final int ENTRY_BYTES = 11;

  private static final String SIGNS = "$%'-_@~`!(){}^#&";

  private ShortName() {}

  /** Whether a name is of the 8.3 form; letters of either case count. */
  public static boolean valid(String name) {
    return fault(name).isEmpty();
  }

  /** What is wrong with a name, in words; empty where nothing is. */
  public static Optional<String> fault(String name) {
    int dot = name.indexOf('.');
    String stem = dot < 0 ? name : name.substring(0, dot);
    String ending = dot < 0 ? "" : name.substring(dot + 1);
    if (stem.isEmpty()) {
      return Optional.of("it has no name before the dot");
    }
    if (ending.indexOf('.') >= 0) {
      return Optional.of("it has more than one dot");
    }
    if (dot >= 0 && ending.isEmpty()) {
      return Optional.of("it ends in a dot");
    }
    if (stem.length() > 8) {
      return Optional.of("it has " + stem.length() + " characters before the dot, 8 at most");
    }
    if (ending.length() > 3) {
      return Optional.of("it has " + ending.length() + " characters after the dot, 3 at most");
    }
    for (char c : (stem + ending).toCharArray()) {
      if (!allowed(c)) {
        return Optional.of("'" + c + "' is not allowed in it");
      }
    }
    return Optional.empty();
  }

  /** As a directory entry stores it: upper case. */
  public static String stored(String name) {
    return name.toUpperCase(Locale.ROOT);
  }

  private static boolean allowed(char c) {
    return c >= 'A' && c <= 'Z'
        || c >= 'a' && c <= 'z'
        || c >= '0' && c <= '9'
        || SIGNS.indexOf(c) >= 0;
  }
}
