package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/** Takes comment marks off: slashes, stars, and the marks that documentation tools add. */
final class CommentText {
  private static final int WIDEST_GAP = 16;

  private CommentText() {}

  /** The lines of one or more comments, marks and rulers taken off, blank lines dropped. */
  static List<String> lines(String raw) {
    List<String> out = new ArrayList<>();
    String all = apart(raw);
    int from = 0;
    while (from <= all.length()) {
      int end = lineEnd(all, from);
      String text = plain(all.substring(from, end));
      if (!text.isEmpty() && !isRuler(text)) {
        out.add(text);
      }
      from = end + 1; // the blank line within CR LF is dropped as any other
    }
    return out;
  }

  /** A line end behind each closed comment, so that the next one on its line stands for itself. */
  private static String apart(String raw) {
    if (!raw.contains("*/")) {
      return raw;
    }
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < raw.length()) {
      int end = at + 1;
      boolean closed = false;
      if (raw.startsWith("//", at)) {
        end = lineEnd(raw, at);
      } else if (raw.startsWith("/*", at)) {
        int close = raw.indexOf("*/", at + 2);
        closed = close >= 0;
        end = closed ? close + 2 : raw.length();
      }
      out.append(raw, at, end).append(closed ? "\n" : "");
      at = end;
    }
    return out.toString();
  }

  private static int lineEnd(String raw, int from) {
    int end = from;
    while (end < raw.length() && raw.charAt(end) != '\n' && raw.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  /** One line without its marks. */
  static String plain(String line) {
    String s = line.strip();
    int from = 0;
    if (s.startsWith("//") || s.startsWith("/*")) {
      from = 2;
      while (from < s.length() && (s.charAt(from) == '/' || s.charAt(from) == '*')) {
        from++;
      }
      while (from < s.length() && (s.charAt(from) == '!' || s.charAt(from) == '<')) {
        from++;
      }
    } else {
      while (from < s.length() && s.charAt(from) == '*') {
        from++;
      }
      if (from < s.length() && s.charAt(from) == '/') {
        from++;
      }
    }
    int to = s.length();
    if (to - 2 >= from && s.startsWith("*/", to - 2)) {
      to -= 2;
      while (to > from && s.charAt(to - 1) == '*') {
        to--;
      }
    }
    return s.substring(Math.min(from, to), to).strip();
  }

  /** The text with wide gaps made narrow, so that a pattern need not try each blank of them. */
  static String narrowed(String text) {
    StringBuilder out = null;
    int run = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      run = c == ' ' || c == '\t' || c == '\f' || c == 0x0b ? run + 1 : 0;
      if (run > WIDEST_GAP && out == null) {
        out = new StringBuilder(text.length()).append(text, 0, i);
      }
      if (run <= WIDEST_GAP && out != null) {
        out.append(c);
      }
    }
    return out == null ? text : out.toString();
  }

  /** Whether the line is drawn of one repeated sign. */
  static boolean isRuler(String text) {
    if (text.length() < 3) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      if ("=-*#/_~+.".indexOf(text.charAt(i)) < 0) {
        return false;
      }
    }
    return true;
  }
}
