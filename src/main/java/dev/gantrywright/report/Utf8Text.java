package dev.gantrywright.report;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A text that grows as UTF-8, in a buffer that can be used again: a long run writes megabytes, and
 * building, joining and encoding strings would take longer than finding what they say.
 */
public final class Utf8Text {
  private static final int START = 1 << 14;

  private byte[] bytes = new byte[START];
  private int length;
  private char[] letters = new char[1 << 9];

  /** Adds a text. */
  public Utf8Text add(String text) {
    return add(text, 0, text.length());
  }

  /** Adds the characters of a text from one index up to another. */
  public Utf8Text add(String text, int from, int to) {
    letters(0, to - from);
    text.getChars(from, to, letters, 0);
    return encode(0, to - from);
  }

  /**
   * Adds two texts as one, broken at spaces into lines that each begin with the margin.
   *
   * @param room most characters of a line beside its margin
   */
  public Utf8Text wrapped(String margin, int room, String first, String second) {
    int end = first.length() + second.length();
    letters(margin.length(), end);
    first.getChars(0, first.length(), letters, 0);
    second.getChars(0, second.length(), letters, first.length());
    int from = 0;
    while (end - from > room) {
      int cut = cut(from, room);
      line(margin, from, cut, end);
      from = cut;
      while (from < end && Character.isWhitespace(letters[from])) {
        from++;
      }
    }
    line(margin, from, end, end);
    return this;
  }

  /** Where the line ends: at its last space, or where there is none at the last character. */
  private int cut(int from, int room) {
    int cut = from + room;
    while (cut > from && letters[cut] != ' ') {
      cut--;
    }
    cut = cut == from ? from + room : cut;
    return Character.isHighSurrogate(letters[cut - 1]) ? cut - 1 : cut;
  }

  /** One line; the margin passes through the letters behind the text. */
  private void line(String margin, int from, int to, int free) {
    margin.getChars(0, margin.length(), letters, free);
    encode(free, free + margin.length());
    encode(from, to);
    letters[free] = '\n';
    encode(free, free + 1);
  }

  private void letters(int spare, int wanted) {
    if (letters.length < wanted + spare + 1) {
      letters = Arrays.copyOf(letters, 2 * (wanted + spare + 1));
    }
  }

  private Utf8Text encode(int from, int to) {
    room(3 * (to - from));
    byte[] into = bytes;
    char[] all = letters;
    int end = length;
    for (int at = from; at < to; at++) {
      char letter = all[at];
      if (letter < 0x80) {
        into[end++] = (byte) letter;
      } else if (letter < 0x800) {
        into[end++] = (byte) (0xC0 | letter >> 6);
        into[end++] = (byte) (0x80 | letter & 0x3F);
      } else if (!Character.isSurrogate(letter)) {
        into[end++] = (byte) (0xE0 | letter >> 12);
        into[end++] = (byte) (0x80 | letter >> 6 & 0x3F);
        into[end++] = (byte) (0x80 | letter & 0x3F);
      } else if (Character.isHighSurrogate(letter)
          && at + 1 < to
          && Character.isLowSurrogate(all[at + 1])) {
        int point = Character.toCodePoint(letter, all[++at]);
        into[end++] = (byte) (0xF0 | point >> 18);
        into[end++] = (byte) (0x80 | point >> 12 & 0x3F);
        into[end++] = (byte) (0x80 | point >> 6 & 0x3F);
        into[end++] = (byte) (0x80 | point & 0x3F);
      } else {
        // Half a character is none: as the platform's own encoder has it.
        into[end++] = '?';
      }
    }
    length = end;
    return this;
  }

  private void room(int more) {
    if (bytes.length - length < more) {
      bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
    }
  }

  /** Empties it; the buffer stays. */
  public Utf8Text clear() {
    length = 0;
    return this;
  }

  /** A copy of the bytes so far. */
  public byte[] bytes() {
    return Arrays.copyOf(bytes, length);
  }

  @Override
  public String toString() {
    return new String(bytes, 0, length, StandardCharsets.UTF_8);
  }
}
