package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;

/** The non-blank lines of a file of text records, whatever ends them. */
final class TextRecords {
  private final byte[] file;
  private int from;
  private int to;
  private int next;
  private int line;

  TextRecords(byte[] file) {
    this.file = file;
  }

  /** Moves to the next line that is not blank; false at the end of the file. */
  boolean next() {
    while (next < file.length) {
      from = next;
      to = from;
      while (to < file.length && file[to] != '\n' && file[to] != '\r') {
        to++;
      }
      next = to + 1;
      if (to < file.length && file[to] == '\r' && next < file.length && file[next] == '\n') {
        next++;
      }
      line++;
      while (to > from && blank(file[to - 1])) {
        to--;
      }
      while (from < to && blank(file[from])) {
        from++;
      }
      if (from < to) {
        return true;
      }
    }
    return false;
  }

  /** A blank, a tab, or the old end-of-text mark that some tools append. */
  private static boolean blank(byte b) {
    return b == ' ' || b == '\t' || b == 0x1A;
  }

  String where() {
    return "record at line " + line;
  }

  int at(int index) {
    return from + index < to ? file[from + index] & 0xFF : -1;
  }

  void expect(char first, String format) throws BrokenImage {
    if (at(0) != first) {
      throw new BrokenImage(
          Reason.BAD_CHARACTER,
          where(),
          "does not start with '" + first + "' as " + format + " does",
          "Give the file that the build wrote.");
    }
  }

  /** The rest of the line as bytes, two hexadecimal digits each, after {@code skip} characters. */
  byte[] octets(int skip) throws BrokenImage {
    int digits = to - from - skip;
    if (digits < 0 || digits % 2 != 0) {
      throw new BrokenImage(
          Reason.BAD_LENGTH, where(), "has half a byte at its end", BrokenImage.AGAIN);
    }
    byte[] out = new byte[digits / 2];
    for (int i = 0; i < out.length; i++) {
      int high = Hex.digit(at(skip + 2 * i));
      int low = Hex.digit(at(skip + 2 * i + 1));
      if (high < 0 || low < 0) {
        throw new BrokenImage(
            Reason.BAD_CHARACTER,
            where(),
            "has a character that is no hexadecimal digit near column " + (skip + 2 * i + 1),
            BrokenImage.AGAIN);
      }
      out[i] = (byte) (high << 4 | low);
    }
    return out;
  }
}
