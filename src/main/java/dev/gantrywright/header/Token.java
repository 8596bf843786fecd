package dev.gantrywright.header;

/**
 * One preprocessing token.
 *
 * @param kind its kind
 * @param text its spelling without splices, ISO-8859-1
 * @param blankBefore whether white space or a comment stands before it
 * @param offset where it starts in its file, or -1 for a token that an expansion made
 * @param hidden the macros that may not expand it again (C17 6.10.3.4), or null
 */
record Token(TokenKind kind, String text, boolean blankBefore, int offset, HideSet hidden) {

  static Token of(TokenKind kind, String text, boolean blankBefore) {
    return new Token(kind, text, blankBefore, -1, null);
  }

  boolean is(String punctuator) {
    return kind == TokenKind.PUNCTUATOR && text.equals(punctuator);
  }

  boolean isName() {
    return kind == TokenKind.NAME;
  }

  Token hiddenBy(HideSet set) {
    return new Token(kind, text, blankBefore, offset, set);
  }

  Token withBlank(boolean blank) {
    return blank == blankBefore ? this : new Token(kind, text, blank, offset, hidden);
  }

  /** The text of a row of tokens, one space where white space stood. */
  static String spell(Iterable<Token> tokens) {
    StringBuilder out = new StringBuilder();
    for (Token token : tokens) {
      if (token.blankBefore() && out.length() > 0) {
        out.append(' ');
      }
      out.append(token.text());
    }
    return out.toString();
  }
}
