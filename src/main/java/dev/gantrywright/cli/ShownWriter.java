package dev.gantrywright.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;

/**
 * Shows control characters instead of sending them on: what a board, a file or a compiler says must
 * not move the cursor, rename the window or hide text in somebody's terminal. New line, return and
 * tab pass. Below 0x80 they are shown as {@code \x1b}; the rest as {@code \}{@code u009b}, which a
 * JSON document holds just as well.
 */
final class ShownWriter extends FilterWriter {
  ShownWriter(Writer out) {
    super(out);
  }

  @Override
  public void write(int c) throws IOException {
    if (harmless((char) c)) {
      out.write(c);
    } else {
      out.write(shown((char) c));
    }
  }

  @Override
  public void write(char[] text, int from, int count) throws IOException {
    int plain = from;
    for (int i = from; i < from + count; i++) {
      if (!harmless(text[i])) {
        out.write(text, plain, i - plain);
        out.write(shown(text[i]));
        plain = i + 1;
      }
    }
    out.write(text, plain, from + count - plain);
  }

  @Override
  public void write(String text, int from, int count) throws IOException {
    write(text.toCharArray(), from, count);
  }

  private static String shown(char c) {
    return String.format(Locale.ROOT, c < 0x80 ? "\\x%02x" : "\\u%04x", (int) c);
  }

  /** Controls of ISO 6429 (C0, DEL, C1) and the ones of Unicode that turn the writing's way. */
  private static boolean harmless(char c) {
    if (c < ' ') {
      return c == '\n' || c == '\r' || c == '\t';
    }
    return c < 0x7F || (c > 0x9F && c < 0x200E) || !turnsText(c);
  }

  private static boolean turnsText(char c) {
    return c <= 0x9F
        || c == 0x200E
        || c == 0x200F
        || (c >= 0x2028 && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069);
  }
}
