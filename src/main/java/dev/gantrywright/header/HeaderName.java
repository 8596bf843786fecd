package dev.gantrywright.header;

import java.util.List;

/** The operand of {@code #include} (C17 6.10.2), macros replaced where it has neither form. */
final class HeaderName {
  private HeaderName() {}

  /** The header with its quotes or angle brackets, or null if the operand names none. */
  static String of(SourceFile file, int row, Conditions conditions) {
    DirectiveTable table = file.table();
    byte[] b = file.bytes();
    int from = table.nameStart(row);
    int to = table.end(row);
    if (from < to && (b[from] == '<' || b[from] == '"')) {
      int close = from + 1;
      int wanted = b[from] == '<' ? '>' : '"';
      while (close < to && b[close] != wanted) {
        close++;
      }
      return close < to && close > from + 1 ? file.text(from, close + 1) : null;
    }
    List<Token> tokens = conditions.expand(file, row, file.tokens().behind(row));
    if (tokens.isEmpty()) {
      return null;
    }
    Token first = tokens.get(0);
    if (first.kind() == TokenKind.STRING && first.text().length() > 2) {
      return first.text();
    }
    if (first.is("<")) {
      int close = 1;
      while (close < tokens.size() && !tokens.get(close).is(">")) {
        close++;
      }
      return close < tokens.size() && close > 1
          ? Token.spell(tokens.subList(0, close + 1)).replaceFirst("^< ", "<")
          : null;
    }
    return null;
  }
}
