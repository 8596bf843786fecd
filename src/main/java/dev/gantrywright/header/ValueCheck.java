package dev.gantrywright.header;

import java.nio.charset.Charset;

/** Judges new text for a definition before it may stand in a file. */
final class ValueCheck {
  private ValueCheck() {}

  /** What keeps the text from being a value on one line, or null. */
  static String fault(String text, Charset charset) {
    if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
      return "the value has a line end in it; give it as one line";
    }
    if (text.indexOf('\0') >= 0) {
      return "the value holds a NUL character; take it out";
    }
    if (!charset.newEncoder().canEncode(text)) {
      return "the file's encoding has no such character as the value holds";
    }
    byte[] bytes = text.getBytes(charset);
    for (Token token : TokenLexer.lex(bytes, 0, bytes.length)) {
      if (token.kind() == TokenKind.OTHER && "\"'".indexOf(quote(token.text())) >= 0) {
        return "a quote in the value is not closed; close it";
      }
    }
    if (holdsComment(bytes)) {
      return "the value has a comment mark in it (// or /*); take it out";
    }
    if (text.stripTrailing().endsWith("\\")) {
      return "the value ends in a backslash, which would join the next line to it";
    }
    return null;
  }

  private static char quote(String text) {
    return text.isEmpty() ? ' ' : text.charAt(0);
  }

  private static boolean holdsComment(byte[] bytes) {
    SourceCursor cursor = new SourceCursor(bytes, 0, bytes.length);
    while (cursor.p < cursor.n) {
      int c = cursor.at(cursor.p);
      if (c == '"' || c == '\'') {
        if (c != '"' || !cursor.rawString(true)) {
          cursor.literal((char) c);
        }
        continue;
      }
      if (c == '/' && (cursor.at(cursor.p + 1) == '/' || cursor.at(cursor.p + 1) == '*')) {
        return true;
      }
      cursor.p++;
    }
    return false;
  }
}
