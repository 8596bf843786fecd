package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;

/**
 * The replacement text of a definition, and where it stands.
 *
 * @param text cleaned as the preprocessor takes it (C17 5.1.1.2 phases 2 and 3): a comment or a run
 *     of blanks is one space, splices are gone, the ends are trimmed
 * @param start offset of the first byte; where a value would go if there is none
 * @param end offset after the last byte
 * @param limit offset at which the directive's own text ends, comments behind the value included
 */
record ValueText(String text, int start, int end, int limit) {

  static ValueText of(SourceFile file, int row) {
    DirectiveTable table = file.table();
    int limit = table.end(row);
    if (table.has(row, DirectiveTable.IN_BLOCK_COMMENT)) {
      limit = blockEnd(file.bytes(), table.nameEnd(row), limit);
    }
    int from = table.nameEnd(row);
    if (table.has(row, DirectiveTable.FUNCTION_LIKE)) {
      from = behindParameters(file.bytes(), from, limit);
    }
    return new Reader(file, from, limit).read();
  }

  private static int blockEnd(byte[] b, int from, int limit) {
    for (int i = from; i + 1 < limit; i++) {
      if (b[i] == '*' && b[i + 1] == '/') {
        return i;
      }
    }
    return limit;
  }

  private static int behindParameters(byte[] b, int from, int limit) {
    SourceCursor cursor = new SourceCursor(b, from, limit);
    while (cursor.p < limit) {
      cursor.skipBlanks();
      if (cursor.p >= limit || cursor.atLineComment()) {
        break;
      }
      if (b[cursor.p++] == ')') {
        return cursor.p;
      }
    }
    return from;
  }

  private static final class Reader extends SourceCursor {
    private final SourceFile file;
    private final int from;
    private final StringBuilder out = new StringBuilder();
    private int start = -1;
    private int end = -1;

    Reader(SourceFile file, int from, int limit) {
      super(file.bytes(), from, limit);
      this.file = file;
      this.from = from;
    }

    ValueText read() {
      while (true) {
        int before = p;
        skipBlanks();
        if (p >= n || atLineComment() || lineEnd(p) > 0) {
          break;
        }
        if (p > before && start >= 0 && onlySplices(before)) {
          out.append("");
        } else if (p > before && start >= 0) {
          out.append(' ');
        }
        if (start < 0) {
          start = p;
        }
        piece();
        end = p;
      }
      String latin1 = out.toString();
      String text =
          file.charset() == StandardCharsets.ISO_8859_1
              ? latin1
              : new String(latin1.getBytes(StandardCharsets.ISO_8859_1), file.charset());
      return start < 0 ? new ValueText("", from, from, n) : new ValueText(text, start, end, n);
    }

    private boolean onlySplices(int before) {
      return pastSplices(before) == p;
    }

    private void piece() {
      int begin = p;
      int c = b[p];
      if (c == '"' || c == '\'') {
        if (c != '"' || !rawString(true)) {
          literal((char) c);
        }
      } else {
        p++;
        while (p < n && !CharacterClass.stop(b[p]) && !CharacterClass.blank(b[p])) {
          p++;
        }
      }
      int i = begin;
      while (i < p) {
        int length = b[i] == '\\' ? splice(i) : 0;
        if (length > 0) {
          i += length;
        } else {
          out.append((char) (b[i] & 0xff));
          i++;
        }
      }
    }
  }
}
