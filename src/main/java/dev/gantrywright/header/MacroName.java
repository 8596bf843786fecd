package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;

/**
 * Macro names as the tables compare them: ISO-8859-1 text of their UTF-8 bytes, without splices, a
 * universal character name (C17 6.4.3) replaced by the character.
 */
final class MacroName {
  private MacroName() {}

  static String clean(byte[] b, int from, int to) {
    SourceCursor cursor = new SourceCursor(b, from, to);
    StringBuilder out = new StringBuilder();
    int p = from;
    while (p < to) {
      int splice = cursor.splice(p);
      if (splice > 0) {
        p += splice;
      } else {
        out.append((char) (b[p] & 0xff));
        p++;
      }
    }
    return universal(out.toString());
  }

  /** Replaces universal character names in a name by the UTF-8 bytes of the character. */
  static String universal(String name) {
    if (name.indexOf('\\') < 0) {
      return name;
    }
    StringBuilder out = new StringBuilder();
    int i = 0;
    while (i < name.length()) {
      int digits = digits(name, i);
      if (digits == 0) {
        out.append(name.charAt(i++));
        continue;
      }
      int point = Integer.parseInt(name.substring(i + 2, i + 2 + digits), 16);
      byte[] utf8 = new String(Character.toChars(point)).getBytes(StandardCharsets.UTF_8);
      out.append(new String(utf8, StandardCharsets.ISO_8859_1));
      i += 2 + digits;
    }
    return out.toString();
  }

  private static int digits(String name, int i) {
    if (name.charAt(i) != '\\' || i + 1 >= name.length()) {
      return 0;
    }
    int want = name.charAt(i + 1) == 'u' ? 4 : name.charAt(i + 1) == 'U' ? 8 : 0;
    if (want == 0 || i + 2 + want > name.length()) {
      return 0;
    }
    for (int k = i + 2; k < i + 2 + want; k++) {
      if (Character.digit(name.charAt(k), 16) < 0) {
        return 0;
      }
    }
    boolean valid =
        want == 4
            || name.startsWith("00", i + 2)
                && Character.isValidCodePoint(Integer.parseInt(name.substring(i + 2, i + 10), 16));
    return valid ? want : 0;
  }
}
