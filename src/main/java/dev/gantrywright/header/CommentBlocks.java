package dev.gantrywright.header;

import java.util.Arrays;

/**
 * The comment blocks of a file outside its directives. A block is a run of comments with nothing
 * but single line ends between them, that does not start behind code.
 */
final class CommentBlocks {
  private int[] spans = new int[64];
  private int count;

  private CommentBlocks() {}

  static CommentBlocks of(SourceFile file) {
    CommentBlocks blocks = new CommentBlocks();
    DirectiveTable table = file.table();
    int from = 0;
    for (int row = 0; row < table.size(); row++) {
      blocks.region(file.bytes(), from, table.start(row));
      from = Math.max(from, table.end(row));
    }
    blocks.region(file.bytes(), from, file.bytes().length);
    return blocks;
  }

  /** Those of a file in which one definition has another text. */
  CommentBlocks moved(OneDefinition difference) {
    CommentBlocks out = new CommentBlocks();
    out.spans = difference.moved(spans, count * 2);
    out.count = count;
    return out;
  }

  private void region(byte[] bytes, int from, int to) {
    SourceCursor cursor = new SourceCursor(bytes, from, to);
    int start = -1;
    int end = -1;
    boolean codeOnLine = from > 0 && cursor.lineEnd(from) == 0;
    int lineEnds = 0;
    while (cursor.p < to) {
      int eol = cursor.lineEnd(cursor.p);
      if (eol > 0) {
        cursor.p += eol;
        codeOnLine = false;
        if (++lineEnds > 1) {
          add(start, end);
          start = -1;
        }
        continue;
      }
      if (CharacterClass.blank(bytes[cursor.p])) {
        cursor.p++;
        continue;
      }
      int at = cursor.p;
      if (comment(cursor)) {
        if (!codeOnLine) {
          start = start < 0 ? at : start;
          end = cursor.p;
        }
        lineEnds = 0;
        continue;
      }
      add(start, end);
      start = -1;
      codeOnLine = true;
      lineEnds = 0;
      code(cursor);
    }
    add(start, end);
  }

  private static boolean comment(SourceCursor cursor) {
    if (cursor.at(cursor.p) != '/') {
      return false;
    }
    if (cursor.blockComment()) {
      return true;
    }
    if (cursor.atLineComment()) {
      cursor.skipLineComment();
      return true;
    }
    return false;
  }

  private static void code(SourceCursor cursor) {
    int c = cursor.at(cursor.p);
    if (c == '"' || c == '\'') {
      if (c != '"' || !cursor.rawString(false)) {
        cursor.literal((char) c);
      }
    } else {
      cursor.p += Math.max(1, cursor.splice(cursor.p));
    }
  }

  private void add(int start, int end) {
    if (start >= 0) {
      if (count * 2 == spans.length) {
        spans = Arrays.copyOf(spans, spans.length * 2);
      }
      spans[count * 2] = start;
      spans[count * 2 + 1] = end;
      count++;
    }
  }

  int count() {
    return count;
  }

  Span block(int i) {
    return new Span(spans[i * 2], spans[i * 2 + 1]);
  }

  /** The block that ends on the line before, or on the line of, the offset; or null. */
  Span above(byte[] bytes, int offset) {
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (spans[middle * 2 + 1] <= offset) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    if (low == 0) {
      return null;
    }
    Span candidate = block(low - 1);
    SourceCursor cursor = new SourceCursor(bytes, candidate.end(), offset);
    int lineEnds = 0;
    while (cursor.p < offset && lineEnds <= 1) {
      int eol = cursor.lineEnd(cursor.p);
      if (eol > 0) {
        lineEnds++;
        cursor.p += eol;
      } else if (CharacterClass.blank(bytes[cursor.p])) {
        cursor.p++;
      } else {
        return null;
      }
    }
    return lineEnds <= 1 ? candidate : null;
  }
}
