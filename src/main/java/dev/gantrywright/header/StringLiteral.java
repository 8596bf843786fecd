package dev.gantrywright.header;

/** C string literals (C17 6.4.5). */
public final class StringLiteral {
  private StringLiteral() {}

  /** The literal for a text: quotes, backslashes and control characters escaped. */
  public static String of(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < 0x20 || c == 0x7f) {
            out.append(String.format("\\%03o", (int) c)); // octal ends after three digits
          } else {
            out.append(c);
          }
        }
      }
    }
    return out.append('"').toString();
  }

  /** The text of a literal, or null if it is not a single plain string literal. */
  public static String text(String literal) {
    if (literal.length() < 2 || !literal.startsWith("\"") || !literal.endsWith("\"")) {
      return null;
    }
    StringBuilder out = new StringBuilder();
    int i = 1;
    int end = literal.length() - 1;
    while (i < end) {
      char c = literal.charAt(i++);
      if (c == '"') {
        return null;
      }
      if (c != '\\') {
        out.append(c);
        continue;
      }
      if (i >= end) {
        return null;
      }
      int[] at = {i - 1};
      out.append((char) NumberReader.escape(literal, at));
      i = at[0];
    }
    return i == end ? out.toString() : null;
  }
}
