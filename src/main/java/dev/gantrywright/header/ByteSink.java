package dev.gantrywright.header;

import java.util.Arrays;

/** Bytes to be written, grown as needed; unlike a stream it takes no lock for each byte. */
final class ByteSink {
  private byte[] bytes;
  private int size;

  ByteSink(int expected) {
    bytes = new byte[Math.max(64, expected)];
  }

  void add(int b) {
    if (size == bytes.length) {
      bytes = Arrays.copyOf(bytes, size * 2);
    }
    bytes[size++] = (byte) b;
  }

  /**
   * Adds a blank and the words of a line, a run of blanks as one, without a comment that ends it.
   * Adds nothing, and says so, where a literal, a splice, a {@code #} or a comment between words
   * asks for a closer look.
   */
  boolean addWords(byte[] source, int from, int to) {
    int mark = size;
    if (size + to - from + 1 > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + to - from + 1));
    }
    byte[] target = bytes;
    byte[] classes = CharacterClass.table();
    int at = mark;
    target[at++] = ' ';
    for (int i = from; i < to; i++) {
      int c = source[i];
      if ((classes[c & 0xff] & CharacterClass.UNPLAIN_BIT) == 0) {
        target[at++] = (byte) c;
      } else if (CharacterClass.blank(c)) {
        if (target[at - 1] != ' ') {
          target[at++] = ' ';
        }
      } else if (c == '/' && !startsComment(source, i, to)) {
        target[at++] = (byte) c;
      } else if (c == '/' && endsLine(source, i, to)) {
        break;
      } else {
        return false;
      }
    }
    if (at > mark + 1 && target[at - 1] == ' ') {
      at--;
    }
    size = at;
    return true;
  }

  private static boolean startsComment(byte[] b, int i, int to) {
    return i + 1 < to && (b[i + 1] == '/' || b[i + 1] == '*' || b[i + 1] == '\\');
  }

  /** Whether the comment that starts here is all that is left of the line. */
  private static boolean endsLine(byte[] b, int start, int to) {
    if (b[start + 1] != '*') {
      return b[start + 1] == '/';
    }
    int i = start + 2;
    while (i + 1 < to && (b[i] != '*' || b[i + 1] != '/')) {
      i++;
    }
    i += 2;
    while (i < to && CharacterClass.blank(b[i])) {
      i++;
    }
    return i >= to;
  }

  void add(byte[] source, int from, int to) {
    int length = to - from;
    if (size + length > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + length));
    }
    System.arraycopy(source, from, bytes, size, length);
    size += length;
  }

  void latin1(String text) {
    for (int i = 0; i < text.length(); i++) {
      add(text.charAt(i));
    }
  }

  int size() {
    return size;
  }

  byte[] array() {
    return bytes;
  }

  byte[] toArray() {
    return Arrays.copyOf(bytes, size);
  }
}
