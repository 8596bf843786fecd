package dev.gantrywright.names;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Recognises a microcontroller's part number in a text: one of the known parts, or text of the
 * shape in which makers number such parts.
 */
public final class McuNames {
  /** Shapes of part numbers, from the makers' ordering guides (memory). */
  private static final Pattern SHAPE =
      Pattern.compile(
          "(?i)(?<![a-z0-9])(stm32[a-z]{1,2}\\d{1,3}[a-z0-9]{0,4}|gd32[a-z]\\d{3}[a-z0-9]{0,3}|"
              + "at?(x?mega|tiny)\\d{2,4}[a-z]{0,2}\\d?|at90usb\\d{3,4}|at?sam[0-9]?[a-z]\\d{1,2}[a-z]\\d{1,2}[a-z]?|"
              + "at?sam[a-z]\\d{2}[a-z]?|lpc\\d{2,4}[a-z]?\\w{0,3}|rp2\\d{3}[a-b]?|esp32(-?[a-z]\\d)?|"
              + "mk\\d{2}[a-z]{1,2}\\d{1,3}\\w*|imxrt\\d{4}|nrf5\\d{4})(?![a-z0-9])");

  /** Every part number has letters directly before digits, or the reverse. */
  private static final Pattern HINT = Pattern.compile("[A-Za-z]-?\\d{2}|[A-Za-z]\\d[A-Za-z]\\d");

  private final List<String> parts;

  /**
   * Knows parts by name.
   *
   * @param parts part numbers, such as those of the catalogue; may be empty
   */
  public McuNames(Collection<String> parts) {
    this.parts =
        parts.stream()
            .sorted((a, b) -> b.length() != a.length() ? b.length() - a.length() : a.compareTo(b))
            .toList();
  }

  /** Knows parts by the shape of their numbers only. */
  public static McuNames byShape() {
    return new McuNames(List.of());
  }

  /** The part that a text names, in the known spelling where it is known. */
  public Optional<String> find(String text) {
    if (!HINT.matcher(text).find()) {
      return Optional.empty();
    }
    Matcher shape = SHAPE.matcher(text);
    if (!shape.find()) {
      String upper = text.toUpperCase(Locale.ROOT);
      return parts.stream().filter(part -> word(upper, part.toUpperCase(Locale.ROOT))).findFirst();
    }
    String found = shape.group(1).toUpperCase(Locale.ROOT);
    for (String part : parts) {
      String known = part.toUpperCase(Locale.ROOT);
      if (found.equals(known) || found.startsWith(known)) {
        return Optional.of(part);
      }
    }
    return Optional.of(spelled(found));
  }

  private static boolean word(String text, String part) {
    int at = text.indexOf(part);
    boolean before = at > 0 && Character.isLetterOrDigit(text.charAt(at - 1));
    int end = at + part.length();
    boolean after = at >= 0 && end < text.length() && Character.isLetterOrDigit(text.charAt(end));
    return at >= 0 && !before && !after;
  }

  private static String spelled(String upper) {
    return upper
        .replaceFirst("^ATMEGA", "ATmega")
        .replaceFirst("^ATXMEGA", "ATxmega")
        .replaceFirst("^ATTINY", "ATtiny");
  }

  /** Whether two part numbers name the same chip, or one names the family of the other. */
  static boolean fits(String a, String b) {
    if (a == null || b == null) {
      return false;
    }
    String left = a.toUpperCase(Locale.ROOT).replaceFirst("^AT(?=SAM)", "");
    String right = b.toUpperCase(Locale.ROOT).replaceFirst("^AT(?=SAM)", "");
    return left.startsWith(right) || right.startsWith(left);
  }
}
