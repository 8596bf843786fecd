package dev.gantrywright.names;

import dev.gantrywright.names.ListParts.Part;
import java.util.ArrayList;
import java.util.List;

/** Walks a list's text: braces, commas, comments, strings. Never fails, whatever the text. */
final class ListScan {
  private final String text;
  private final List<Part> parts = new ArrayList<>();
  private final StringBuilder note = new StringBuilder();
  private int row = -1;
  private int column;
  private int start = -1;
  private int end;
  private int depth;
  private String designator = "";
  private String outer = "";

  private ListScan(String text) {
    this.text = text;
  }

  /** The leaves of a brace list that opens at an offset. */
  static List<Part> leaves(String text, int open) {
    ListScan scan = new ListScan(text);
    scan.walk(open, text.length());
    return scan.parts;
  }

  /** The parts between two offsets, split at commas outside brackets. */
  static List<Part> flat(String text, int from, int to) {
    ListScan scan = new ListScan(text);
    scan.row = 0;
    scan.walk(from, to);
    scan.finish();
    return scan.parts;
  }

  /** Offset of the bracket that closes the one at an offset; -1 where none does. */
  static int close(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      int skipped = skip(text, i);
      if (skipped > i) {
        i = skipped - 1;
        continue;
      }
      char c = text.charAt(i);
      if (c == '(') {
        depth++;
      } else if (c == ')' && --depth == 0) {
        return i;
      }
    }
    return -1;
  }

  private void walk(int from, int to) {
    int parens = 0;
    for (int i = from; i < to; i++) {
      int skipped = skip(text, i);
      if (skipped > i) {
        comment(i, skipped);
        i = skipped - 1;
        continue;
      }
      char c = text.charAt(i);
      if (c == '{' && parens == 0) {
        depth++;
        opened();
      } else if (c == '}' && parens == 0) {
        finish();
        depth--;
        outer = depth <= 1 ? "" : outer;
      } else if (c == ',' && parens == 0) {
        finish();
      } else if (c == '=' && start >= 0 && designates()) {
        designator = text.substring(start, end).strip();
        start = -1;
      } else if (!Character.isWhitespace(c) && c != '\\') {
        parens += c == '(' ? 1 : c == ')' ? -1 : 0;
        extend(i, i + 1);
      }
    }
  }

  private boolean designates() {
    char first = text.charAt(start);
    return first == '.' || first == '[';
  }

  private void opened() {
    if (depth == 1) {
      row = -1;
      return;
    }
    outer = designator;
    designator = "";
    start = -1;
    row++;
    column = 0;
  }

  private void extend(int from, int to) {
    if (start < 0) {
      start = from;
    }
    end = to;
  }

  private void comment(int from, int to) {
    if (text.charAt(from) == '/') {
      String body = text.substring(from, to).replaceAll("^/[*/]|\\*/$", "").strip();
      note.append(note.length() == 0 ? "" : " ").append(body);
    } else {
      extend(from, to);
    }
  }

  private void finish() {
    if (start >= 0) {
      String name = (outer + designator).strip();
      parts.add(
          new Part(
              start,
              end,
              text.substring(start, end).strip(),
              name,
              note.toString(),
              Math.max(row, 0),
              column,
              Math.max(depth, 1)));
      column++;
      note.setLength(0);
    }
    start = -1;
    designator = "";
  }

  /** The end of the comment, string or character constant that starts here; else the offset. */
  private static int skip(String text, int at) {
    char c = text.charAt(at);
    if (c == '"' || c == '\'') {
      int i = at + 1;
      while (i < text.length() && text.charAt(i) != c) {
        i += text.charAt(i) == '\\' ? 2 : 1;
      }
      return Math.min(i + 1, text.length());
    }
    if (c == '/' && at + 1 < text.length()) {
      if (text.charAt(at + 1) == '*') {
        int close = text.indexOf("*/", at + 2);
        return close < 0 ? text.length() : close + 2;
      }
      if (text.charAt(at + 1) == '/') {
        int close = text.indexOf('\n', at);
        return close < 0 ? text.length() : close;
      }
    }
    return at;
  }
}
