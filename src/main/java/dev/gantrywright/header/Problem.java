package dev.gantrywright.header;

/**
 * Something in the input that a reader should know of; reading goes on.
 *
 * @param file path as the document names it
 * @param line line counted from 1, or 0 when the whole file is meant
 * @param column byte column counted from 1, or 0 when the whole line is meant
 * @param text one clear line: what is wrong and what to do
 */
public record Problem(String file, int line, int column, String text) {
  private static final int LONGEST = 400;

  public Problem {
    text = oneLine(text);
  }

  private static String oneLine(String text) {
    StringBuilder out = new StringBuilder(Math.min(text.length(), LONGEST));
    for (int i = 0; i < text.length() && out.length() < LONGEST; i++) {
      char c = text.charAt(i);
      boolean breaks = Character.isISOControl(c) || c == '\u2028' || c == '\u2029';
      out.append(breaks ? ' ' : c);
    }
    return out.toString();
  }

  /** The problem as one line, {@code file:line:column: text}. */
  @Override
  public String toString() {
    StringBuilder out = new StringBuilder(file);
    if (line > 0) {
      out.append(':').append(line);
      if (column > 0) {
        out.append(':').append(column);
      }
    }
    return out.append(": ").append(text).toString();
  }
}
