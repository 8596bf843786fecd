package dev.gantrywright.names;

/** Takes the brackets off a value that stands in them as a whole. */
final class Parens {
  private Parens() {}

  /** The text without the brackets around all of it: {@code ((80))} as {@code 80}. */
  static String off(String text) {
    String inner = text.strip();
    while (inner.length() > 2 && inner.charAt(0) == '(' && closes(inner)) {
      inner = inner.substring(1, inner.length() - 1).strip();
    }
    return inner;
  }

  /** Whether the bracket at the start is closed by the one at the end. */
  private static boolean closes(String text) {
    int open = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      open += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (open == 0) {
        return i == text.length() - 1;
      }
    }
    return false;
  }
}
