package dev.gantrywright.names;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Text as the word table knows it: lower case, without accents, split into words. */
final class Folded {
  /** Letters by which habit tells a variable's type or scope; common practice, no source. */
  private static final Set<String> TYPE_PREFIXES =
      Set.of(
          "k", "b", "f", "n", "i", "u", "g", "s", "m", "c", "d", "w", "fl", "sz", "dw", "ul", "ui",
          "st", "by", "m_", "g_", "s_", "k_");

  private Folded() {}

  /** Lower case and without accents; text that was UTF-8 read byte by byte is repaired first. */
  static String text(String raw) {
    String text = repaired(raw);
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > 127) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
        return apart.toLowerCase(Locale.ROOT).replace("ß", "ss");
      }
    }
    return text.toLowerCase(Locale.ROOT);
  }

  private static String repaired(String raw) {
    boolean high = false;
    for (int i = 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      if (c > 255) {
        return raw;
      }
      high |= c > 127;
    }
    if (!high) {
      return raw;
    }
    try {
      byte[] bytes = raw.getBytes(StandardCharsets.ISO_8859_1);
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException latin) {
      return raw;
    }
  }

  /** The words of a comment or heading. */
  static List<String> words(String raw) {
    String text = text(raw);
    List<String> words = new ArrayList<>();
    int start = -1;
    for (int i = 0; i <= text.length(); i++) {
      boolean part = i < text.length() && Character.isLetterOrDigit(text.charAt(i));
      if (part && start < 0) {
        start = i;
      } else if (!part && start >= 0) {
        words.add(text.substring(start, i));
        start = -1;
      }
    }
    return words;
  }

  /**
   * The words of an identifier: split at underscores, at case, and between letters and digits
   * unless one letter stands before the digit ({@code e0}). A one- or two-letter type prefix of a
   * camel-case name is left out.
   */
  static List<String> identifier(String name) {
    List<String> words = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= name.length(); i++) {
      if (i == name.length() || boundary(name, start, i)) {
        String word = name.substring(start, i);
        String letters = lettersAndDigits(word);
        if (!letters.isEmpty()) {
          words.add(text(letters));
        }
        start = i;
      }
    }
    boolean prefixed = words.size() > 1 && typePrefix(name);
    return prefixed ? words.subList(1, words.size()) : words;
  }

  private static String lettersAndDigits(String word) {
    int from = 0;
    int to = word.length();
    while (from < to && !Character.isLetterOrDigit(word.charAt(from))) {
      from++;
    }
    while (to > from && !Character.isLetterOrDigit(word.charAt(to - 1))) {
      to--;
    }
    return word.substring(from, to);
  }

  /** Whether a camel-case name begins with a type's one or two letters: {@code fSpeed}. */
  private static boolean typePrefix(String name) {
    int length = 0;
    while (length < name.length() && length < 2 && !upper(name.charAt(length))) {
      length++;
    }
    if (length == 0
        || length >= name.length()
        || !TYPE_PREFIXES.contains(name.substring(0, length))
        || !upper(name.charAt(length))) {
      return false;
    }
    for (int i = length + 1; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c >= 'a' && c <= 'z') {
        return true;
      }
      if (!upper(c)) {
        return false;
      }
    }
    return false;
  }

  private static boolean upper(char c) {
    return c >= 'A' && c <= 'Z';
  }

  private static boolean boundary(String name, int start, int i) {
    char before = name.charAt(i - 1);
    char here = name.charAt(i);
    if (!Character.isLetterOrDigit(here)) {
      return Character.isLetterOrDigit(before);
    }
    if (!Character.isLetterOrDigit(before)) {
      return true;
    }
    if (Character.isDigit(here) != Character.isDigit(before)) {
      return Character.isDigit(before) || i - start > 1;
    }
    if (Character.isUpperCase(here) && Character.isLowerCase(before)) {
      return true;
    }
    boolean nextLower = i + 1 < name.length() && Character.isLowerCase(name.charAt(i + 1));
    return Character.isUpperCase(here) && Character.isUpperCase(before) && nextLower;
  }
}
