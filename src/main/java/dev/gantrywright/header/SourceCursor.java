package dev.gantrywright.header;

import static dev.gantrywright.header.CharacterClass.blank;

/**
 * A place in source bytes that knows translation phases 2 and 3 (C17 5.1.1.2): splices vanish,
 * comments and literals are passed over whole.
 */
class SourceCursor {
  final byte[] b;
  final int n;
  int p;

  /** Set when a comment, a literal or a splice was passed over. */
  boolean unplain;

  /** Where a comment starts that the file never closes, or -1. */
  int openComment = -1;

  SourceCursor(byte[] bytes, int from, int to) {
    b = bytes;
    p = from;
    n = to;
  }

  /** The length of the splice at {@code at}: a backslash, perhaps blanks, a line end; or 0. */
  final int splice(int at) {
    if (at >= n || b[at] != '\\') {
      return 0;
    }
    int q = at + 1;
    while (q < n && b[q] != 0 && blank(b[q])) {
      q++;
    }
    int eol = lineEnd(q);
    return eol == 0 ? 0 : q + eol - at;
  }

  /** The length of the line end at {@code at}: 2 for CR LF, 1 for LF or CR, or 0. */
  final int lineEnd(int at) {
    if (at >= n) {
      return 0;
    }
    if (b[at] == '\n') {
      return 1;
    }
    if (b[at] == '\r') {
      return at + 1 < n && b[at + 1] == '\n' ? 2 : 1;
    }
    return 0;
  }

  /** The offset of the first byte at or behind {@code at} that is not part of a splice. */
  final int pastSplices(int at) {
    int q = at;
    int length;
    while ((length = splice(q)) > 0) {
      q += length;
    }
    return q;
  }

  /** The byte at the offset; behind the end a line feed, which starts and continues nothing. */
  final int at(int offset) {
    return offset < n ? b[offset] & 0xff : '\n';
  }

  /** Passes blanks, splices and block comments; stays on a line comment. */
  final void skipBlanks() {
    while (p < n) {
      int c = b[p];
      if (c == ' ' || c == '\t') {
        p++;
      } else if (c == '\\') {
        int length = splice(p);
        if (length == 0) {
          return;
        }
        unplain = true;
        p += length;
      } else if (c == '/') {
        if (!blockComment()) {
          return;
        }
      } else if (blank(c)) {
        p++;
      } else {
        return;
      }
    }
  }

  /** Passes a block comment if one starts here. */
  final boolean blockComment() {
    int q = pastSplices(p + 1);
    if (at(q) != '*') {
      return false;
    }
    unplain = true;
    int start = p;
    p = toAsterisk(q + 1);
    while (p < n) {
      int next = pastSplices(p + 1);
      if (at(next) == '/') {
        p = next + 1;
        return true;
      }
      p = toAsterisk(p + 1);
    }
    openComment = start;
    return true;
  }

  private int toAsterisk(int from) {
    byte[] bytes = b;
    int end = n;
    int q = from;
    while (q < end && bytes[q] != '*') {
      q++;
    }
    return q;
  }

  final boolean atLineComment() {
    return at(p) == '/' && at(pastSplices(p + 1)) == '/';
  }

  /** Goes to the end of a logical line inside which nothing has a meaning. */
  final void skipLineComment() {
    unplain = true;
    while (p < n) {
      int c = b[p];
      if (c == '\n' || c == '\r') {
        return;
      }
      int length = c == '\\' ? splice(p) : 0;
      p = length > 0 ? p + length : toStop(p + 1);
    }
  }

  /** Goes to the end of the logical line, past comments and literals. */
  final void skipLine(boolean inDirective) {
    while (true) {
      p = toStop(p);
      if (p >= n) {
        return;
      }
      switch (b[p]) {
        case '\n', '\r' -> {
          return;
        }
        case '"' -> {
          unplain = true;
          if (!rawString(inDirective)) {
            literal('"');
          }
        }
        case '\'' -> literal('\'');
        case '/' -> {
          if (!blockComment()) {
            if (atLineComment()) {
              skipLineComment();
              return;
            }
            p++;
          }
        }
        default -> {
          unplain = true;
          p += Math.max(1, splice(p));
        }
      }
    }
  }

  /** The offset of the first byte from here on that may end a line or open something. */
  private int toStop(int from) {
    byte[] bytes = b;
    byte[] classes = CharacterClass.table();
    int end = n;
    int q = from;
    while (q < end && (classes[bytes[q] & 0xff] & CharacterClass.STOP_BIT) == 0) {
      q++;
    }
    return q;
  }

  /** Passes a string or character constant; one that is not closed ends with its logical line. */
  final void literal(char quote) {
    unplain = true;
    p++;
    while (p < n) {
      int c = b[p];
      if (c == '\n' || c == '\r') {
        return;
      }
      if (c == '\\') {
        int length = splice(p);
        if (length > 0) {
          p += length;
          continue;
        }
        p = pastSplices(p + 1);
        if (lineEnd(p) == 0 && p < n) {
          p++;
        }
        continue;
      }
      p++;
      if (c == quote) {
        return;
      }
    }
  }

  /** Passes a raw string whose quote is here; in a directive it cannot leave its line. */
  final boolean rawString(boolean inDirective) {
    if (p == 0 || b[p - 1] != 'R' || !rawPrefix()) {
      return false;
    }
    int open = p + 1;
    while (open < n && open - p <= 16 && b[open] != '(') {
      int c = b[open];
      if (c == ')' || c == '\\' || c == '"' || blank(c) || lineEnd(open) > 0) {
        return false;
      }
      open++;
    }
    if (open >= n || b[open] != '(') {
      return false;
    }
    int delimiter = open - p - 1;
    for (int q = open + 1; q < n; q++) {
      if (inDirective && lineEnd(q) > 0) {
        p = q;
        return true;
      }
      if (b[q] == ')' && closes(q, delimiter)) {
        p = q + delimiter + 2;
        return true;
      }
    }
    p = n;
    return true;
  }

  private boolean closes(int paren, int delimiter) {
    if (paren + delimiter + 1 >= n || b[paren + delimiter + 1] != '"') {
      return false;
    }
    for (int i = 1; i <= delimiter; i++) {
      if (b[paren + i] != b[p + i]) {
        return false;
      }
    }
    return true;
  }

  /** Whether the bytes before the quote are R, LR, uR, UR or u8R, standing alone. */
  private boolean rawPrefix() {
    int q = p - 1;
    while (q > 0 && CharacterClass.namePart(b[q - 1])) {
      q--;
    }
    int length = p - q;
    return length == 1
        || length == 2 && (b[q] == 'L' || b[q] == 'u' || b[q] == 'U')
        || length == 3 && b[q] == 'u' && b[q + 1] == '8';
  }
}
