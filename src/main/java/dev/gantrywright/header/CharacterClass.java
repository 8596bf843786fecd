package dev.gantrywright.header;

/** Classes of source bytes. Bytes are taken as ISO-8859-1, so that an offset is a byte offset. */
final class CharacterClass {
  private static final byte NAME_START = 1;
  private static final byte DIGIT = 2;
  private static final byte BLANK = 4;
  private static final byte STOP = 8;
  private static final byte UNPLAIN = 16;
  private static final byte[] CLASS = classes();

  /** The bits of {@link #table} that make a byte part of a name. */
  static final int NAME_BITS = NAME_START | DIGIT;

  /** The bit of {@link #table} at which the search for a line's end looks twice. */
  static final int STOP_BIT = STOP;

  /** The bit of {@link #table} that keeps a byte from being listed as it stands. */
  static final int UNPLAIN_BIT = UNPLAIN;

  private CharacterClass() {}

  private static byte[] classes() {
    byte[] c = new byte[256];
    for (int i = 'a'; i <= 'z'; i++) {
      c[i] = NAME_START;
      c[i - 'a' + 'A'] = NAME_START;
    }
    c['_'] = NAME_START;
    c['$'] = NAME_START; // compilers for microcontrollers take it in a name
    for (int i = 0x80; i < 0x100; i++) {
      c[i] = NAME_START; // part of a UTF-8 sequence
    }
    for (int i = '0'; i <= '9'; i++) {
      c[i] = DIGIT;
    }
    for (char blank : new char[] {' ', '\t', '\f', 0x0B, 0}) {
      c[blank] = BLANK;
    }
    for (char stop : new char[] {'\n', '\r', '"', '\'', '/', '\\'}) {
      c[stop] |= STOP | UNPLAIN;
    }
    for (char sign : new char[] {' ', '\t', '\f', 0x0B, 0, '#', '%'}) {
      c[sign] |= UNPLAIN;
    }
    return c;
  }

  /**
   * The classes of all 256 bytes, for the innermost loops: a virtual machine that has just started
   * pays for every call. Not to be changed.
   */
  static byte[] table() {
    return CLASS;
  }

  static boolean nameStart(int c) {
    return (CLASS[c & 0xff] & NAME_START) != 0;
  }

  static boolean namePart(int c) {
    return (CLASS[c & 0xff] & (NAME_START | DIGIT)) != 0;
  }

  static boolean digit(int c) {
    return (CLASS[c & 0xff] & DIGIT) != 0;
  }

  /** White space inside a line; NUL counts, as compilers have it. */
  static boolean blank(int c) {
    return (CLASS[c & 0xff] & BLANK) != 0;
  }

  /** A byte at which the search for the end of a line has to look twice. */
  static boolean stop(int c) {
    return (CLASS[c & 0xff] & STOP) != 0;
  }
}
