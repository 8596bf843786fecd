package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/** Finds the elements of a brace list such as <code>{ 80, 80, { 1, 2 } }</code>. */
final class BraceList {
  private BraceList() {}

  /**
   * The outer elements of the list that starts at {@code from}, each from its first to its last
   * token; empty if no list that closes before {@code to} starts there.
   */
  static List<Span> elements(byte[] bytes, int from, int to) {
    if (from >= to || bytes[from] != '{') {
      return List.of();
    }
    SourceCursor cursor = new SourceCursor(bytes, from + 1, to);
    List<Span> out = new ArrayList<>();
    int depth = 0;
    int start = -1;
    int end = -1;
    while (true) {
      cursor.skipBlanks();
      if (cursor.p >= to || cursor.atLineComment()) {
        return List.of();
      }
      int at = cursor.p;
      int c = cursor.at(at);
      boolean closing = depth == 0 && c == '}';
      if (closing || depth == 0 && c == ',') {
        if (start >= 0) {
          out.add(new Span(start, end));
        }
        if (closing) {
          return List.copyOf(out);
        }
        start = -1;
        cursor.p++;
        continue;
      }
      if (c == '"' || c == '\'') {
        if (c != '"' || !cursor.rawString(true)) {
          cursor.literal((char) c);
        }
      } else {
        depth += c == '{' || c == '(' || c == '[' ? 1 : c == '}' || c == ')' || c == ']' ? -1 : 0;
        cursor.p++;
      }
      start = start < 0 ? at : start;
      end = cursor.p;
    }
  }
}
