package dev.gantrywright.header;

import static dev.gantrywright.header.CharacterClass.blank;
import static dev.gantrywright.header.CharacterClass.namePart;
import static dev.gantrywright.header.CharacterClass.nameStart;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Finds the directives of a file (C17 6.10) in one pass over its bytes. */
final class DirectiveScanner extends SourceCursor {
  /** What the scanner found wrong: where, and one line of text. */
  record Fault(int offset, String text) {
    Fault moved(OneDefinition difference) {
      return new Fault(difference.moved(offset), text);
    }
  }

  private static final byte[] PRAGMA = {'_', 'P', 'r', 'a', 'g', 'm', 'a'};
  private static final byte[] DEFINE = {'d', 'e', 'f', 'i', 'n', 'e'};

  /** From the start of {@code /*#define X} to the end of its comment's text. */
  private static final int SHORTEST_OFF = 11;

  private final DirectiveTable table;
  private final List<Fault> faults = new ArrayList<>();
  private int[] chain = new int[16];
  private int[] opener = new int[16];
  private int depth;
  private int hash;
  private int nameFlags;

  /** Up to here a line was looked through for something behind its comments, and holds it. */
  private int notAlone;

  private DirectiveScanner(byte[] bytes) {
    super(bytes, 0, bytes.length);
    table = new DirectiveTable(bytes.length / 48);
  }

  /** The directives of a file and what is wrong with them. */
  record Scan(DirectiveTable table, List<Fault> faults) {}

  static Scan scan(byte[] bytes) {
    DirectiveScanner scanner = new DirectiveScanner(bytes);
    scanner.file();
    scanner.table.trim();
    return new Scan(scanner.table, List.copyOf(scanner.faults));
  }

  /** What a file of another language gives: nothing. */
  static Scan none() {
    return new Scan(new DirectiveTable(0), List.of());
  }

  private void file() {
    if (n >= 3 && at(0) == 0xEF && at(1) == 0xBB && at(2) == 0xBF) {
      p = 3;
    }
    while (p < n) {
      logicalLine();
      p += lineEnd(p);
    }
    if (openComment >= 0) {
      faults.add(
          new Fault(openComment, "this comment is never closed; close it with */ before the end"));
    }
    while (depth > 0) {
      depth--;
      table.setLink(chain[depth], table.size());
      faults.add(
          new Fault(
              table.start(opener[depth]), "this conditional has no #endif before the end of file"));
    }
  }

  private void logicalLine() {
    skipLeadingBlanks();
    if (p >= n) {
      return;
    }
    switch (b[p]) {
      case '#' -> {
        if (!plainDefinition()) {
          directive(p, p + 1);
        }
      }
      case '%' -> {
        int colon = pastSplices(p + 1);
        if (at(colon) == ':') {
          directive(p, colon + 1);
        } else {
          skipLine(false);
        }
      }
      case '/' -> {
        if (atLineComment()) {
          int start = p;
          skipLineComment();
          offDefinition(start, start + 2, p, p, 0);
        } else {
          skipLine(false);
        }
      }
      case '_' -> pragmaOperator();
      default -> skipLine(false);
    }
  }

  /** C17 6.10.9: what this operator would do to macros is named, not done. */
  private void pragmaOperator() {
    int start = p;
    skipLine(false);
    if (p - start > PRAGMA.length && Arrays.equals(b, start, start + 7, PRAGMA, 0, 7)) {
      String line = new String(b, start, p - start, StandardCharsets.ISO_8859_1);
      for (String act : List.of("push_macro", "pop_macro", "poison", "once")) {
        if (line.contains(act)) {
          String text = "_Pragma with " + act + " is not acted on; a line #pragma … would be";
          faults.add(new Fault(start, text));
          return;
        }
      }
    }
  }

  /** Passes what may stand before a directive, and notes commented-out definitions there. */
  private void skipLeadingBlanks() {
    while (p < n) {
      int c = b[p];
      if (blank(c)) {
        p++;
      } else if (c == '\\' && splice(p) > 0) {
        p += splice(p);
      } else if (c == '/' && at(pastSplices(p + 1)) == '*') {
        int start = p;
        blockComment();
        if (openComment < 0) {
          blockDefinition(start);
        }
      } else {
        return;
      }
    }
  }

  private void blockDefinition(int start) {
    int close = p - 2;
    if (p <= notAlone) {
      return;
    }
    if (close < start + SHORTEST_OFF || !offKeyword(start + 2, close)) {
      return;
    }
    for (int q = start; q < close; q++) {
      if (lineEnd(q) > 0) {
        return;
      }
    }
    int after = behindComments(p);
    boolean alone = after >= n || lineEnd(after) > 0;
    boolean note = at(after) == '/' && at(after + 1) == '/';
    if (alone || note) {
      int resume = p;
      int end = behindBlanks(p);
      p = after;
      if (note) {
        skipLineComment();
      }
      boolean noted = note || end < after;
      offDefinition(start, start + 2, close, p, DirectiveTable.IN_BLOCK_COMMENT);
      p = noted ? p : resume;
    } else {
      notAlone = after;
    }
  }

  private int behindBlanks(int from) {
    int q = from;
    while (q < n && blank(b[q])) {
      q++;
    }
    return q;
  }

  /** The offset behind blanks and comments that end on the same line. */
  private int behindComments(int from) {
    int q = behindBlanks(from);
    while (at(q) == '/' && at(q + 1) == '*') {
      int close = q + 2;
      while (close < n && lineEnd(close) == 0 && (b[close] != '*' || at(close + 1) != '/')) {
        close++;
      }
      if (close >= n || lineEnd(close) > 0) {
        return q;
      }
      q = behindBlanks(close + 2);
    }
    return q;
  }

  /** Whether the comment text from {@code from} on begins with a hash and {@code define}. */
  private boolean offKeyword(int from, int to) {
    int q = offHash(from, to);
    return q >= 0;
  }

  /** The offset behind {@code #define} at the start of a comment's text, or -1. */
  private int offHash(int from, int to) {
    int q = from;
    while (q < to && (b[q] == '/' || blank(b[q]))) {
      q++;
    }
    if (q >= to || b[q] != '#') {
      return -1;
    }
    q++;
    while (q < to && blank(b[q])) {
      q++;
    }
    int word = q;
    while (q < to && namePart(b[q])) {
      q++;
    }
    return Arrays.equals(b, word, q, DEFINE, 0, DEFINE.length) && q < to && blank(b[q]) ? q : -1;
  }

  private void offDefinition(int start, int from, int to, int end, int flags) {
    int q = offHash(from, to);
    if (q < 0) {
      return;
    }
    int resume = p;
    boolean wasUnplain = unplain;
    p = q;
    skipInside(to);
    int nameFrom = p;
    if (p < to && nameStart(b[p])) {
      name();
      int function = at(p) == '(' ? DirectiveTable.FUNCTION_LIKE : 0;
      table.add(
          DirectiveKind.OFF_DEFINE,
          flags | nameFlags | function,
          start,
          nameFrom,
          Math.min(p, to),
          end,
          hash);
    }
    p = resume;
    unplain = wasUnplain;
  }

  /** Passes blanks, splices and block comments that end before {@code to}. */
  private void skipInside(int to) {
    while (p < to) {
      if (b[p] == '/' && at(p + 1) == '*') {
        int close = p + 2;
        while (close + 1 < to && (b[close] != '*' || b[close + 1] != '/')) {
          close++;
        }
        if (close + 1 >= to) {
          return;
        }
        p = close + 2;
      } else if (blank(b[p]) || splice(p) > 0) {
        p += Math.max(1, splice(p));
      } else {
        return;
      }
    }
  }

  /**
   * Takes {@code #define NAME …} spelled as nearly every line of a large header has it, in few
   * calls; false, and nothing done, where it is spelled otherwise.
   */
  private boolean plainDefinition() {
    byte[] bytes = b;
    int start = p;
    int q = start + 8;
    if (q >= n || bytes[start + 1] != 'd' || bytes[q - 1] != ' ' || bytes[start + 3] != 'f') {
      return false;
    }
    for (int i = 0; i < DEFINE.length; i++) {
      if (bytes[start + 1 + i] != DEFINE[i]) {
        return false;
      }
    }
    while (q < n && bytes[q] == ' ') {
      q++;
    }
    byte[] classes = CharacterClass.table();
    int from = q;
    int h = 0;
    while (q < n) {
      int c = bytes[q];
      if (c < 0 || (classes[c] & CharacterClass.NAME_BITS) == 0) {
        break;
      }
      h = 31 * h + c;
      q++;
    }
    if (q == from || q == n || bytes[q] < 0 || bytes[q] == '\\' || !nameStart(bytes[from])) {
      return false;
    }
    int flags = bytes[q] == '(' ? DirectiveTable.FUNCTION_LIKE : 0;
    unplain = false;
    p = q;
    skipLine(true);
    table.add(
        DirectiveKind.DEFINE, unplain ? flags : flags | DirectiveTable.PLAIN, start, from, q, p, h);
    return true;
  }

  private void directive(int start, int afterHash) {
    unplain = false;
    p = afterHash;
    skipBlanks();
    if (p >= n || lineEnd(p) > 0 || atLineComment()) {
      skipLine(true);
      table.add(DirectiveKind.NULL, 0, start, p, p, p, 0);
      return;
    }
    DirectiveKind kind = keyword();
    skipBlanks();
    int nameFrom = p;
    int nameTo = p;
    int flags = 0;
    hash = 0;
    switch (kind) {
      case DEFINE, UNDEF, IFDEF, IFNDEF, ELIFDEF, ELIFNDEF -> {
        if (p < n && (nameStart(b[p]) || startsUniversal())) {
          name();
          flags = nameFlags;
          nameTo = p;
          if (at(pastSplices(p)) == '(' && kind == DirectiveKind.DEFINE) {
            flags |= DirectiveTable.FUNCTION_LIKE;
          }
        }
      }
      case INCLUDE, INCLUDE_NEXT, IMPORT -> headerName();
      default -> {}
    }
    skipLine(true);
    if (!unplain) {
      flags |= DirectiveTable.PLAIN;
    }
    int row = table.add(kind, flags, start, nameFrom, nameTo, p, hash);
    nest(kind, row);
  }

  private boolean startsUniversal() {
    return b[p] == '\\' && (at(p + 1) == 'u' || at(p + 1) == 'U');
  }

  private DirectiveKind keyword() {
    int from = p;
    while (p < n && namePart(b[p])) {
      p++;
    }
    if (splice(p) == 0) {
      return DirectiveKind.ofKeyword(b, from, p);
    }
    byte[] word = new byte[16];
    int length = 0;
    p = from;
    while (p < n && (namePart(b[p]) || splice(p) > 0)) {
      if (splice(p) > 0) {
        p += splice(p);
      } else {
        if (length < word.length) {
          word[length++] = b[p];
        }
        p++;
      }
    }
    return DirectiveKind.ofKeyword(word, 0, length);
  }

  /** Reads a macro name: its end, its hash and whether it needs cleaning before it is compared. */
  private void name() {
    int h = 0;
    nameFlags = 0;
    while (p < n) {
      int c = b[p];
      if (namePart(c)) {
        if (c < 0) {
          nameFlags = DirectiveTable.UNUSUAL_NAME;
        }
        h = 31 * h + (c & 0xff);
        p++;
      } else if (c == '\\' && (splice(p) > 0 || at(p + 1) == 'u' || at(p + 1) == 'U')) {
        int length = splice(p);
        if (length > 0 && !namePart(at(pastSplices(p)))) {
          break;
        }
        nameFlags = DirectiveTable.UNUSUAL_NAME;
        p = length > 0 ? pastSplices(p) : p + 1;
      } else {
        break;
      }
    }
    hash = h;
  }

  /** An angle-bracketed header name may hold quotes and comment marks (C17 6.4.7). */
  private void headerName() {
    if (at(p) != '<') {
      return;
    }
    int q = p;
    while (q < n && lineEnd(q) == 0) {
      if (b[q] == '>') {
        p = q + 1;
        return;
      }
      q++;
    }
  }

  private void nest(DirectiveKind kind, int row) {
    if (kind.opensConditional()) {
      if (depth == chain.length) {
        chain = Arrays.copyOf(chain, depth * 2);
        opener = Arrays.copyOf(opener, depth * 2);
      }
      chain[depth] = row;
      opener[depth++] = row;
    } else if (kind.continuesConditional() || kind == DirectiveKind.ENDIF) {
      if (depth == 0) {
        faults.add(new Fault(table.start(row), "this has no #if before it; take it out"));
        table.setLink(row, row);
        return;
      }
      int before = chain[depth - 1];
      if (table.kind(before) == DirectiveKind.ELSE && kind != DirectiveKind.ENDIF) {
        faults.add(new Fault(table.start(row), "this stands behind the #else of its #if"));
      }
      table.setLink(before, row);
      chain[depth - 1] = row;
      if (kind == DirectiveKind.ENDIF) {
        depth--;
      }
    }
  }
}
