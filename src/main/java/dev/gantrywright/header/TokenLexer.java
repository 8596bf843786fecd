package dev.gantrywright.header;

import static dev.gantrywright.header.CharacterClass.digit;
import static dev.gantrywright.header.CharacterClass.namePart;
import static dev.gantrywright.header.CharacterClass.nameStart;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Cuts a range of bytes into preprocessing tokens (C17 6.4), splices and comments taken out. */
final class TokenLexer extends SourceCursor {
  private static final String[] PUNCTUATORS = {
    "%:%:", "...", "<<=", ">>=", "##", "->", "++", "--", "<<", ">>", "<=", ">=", "==", "!=", "&&",
    "||", "*=", "/=", "%=", "+=", "-=", "&=", "^=", "|=", "<:", ":>", "<%", "%>", "%:"
  };

  private final List<Token> out = new ArrayList<>();
  private final boolean asSpelled;
  private boolean blank;

  private TokenLexer(byte[] bytes, int from, int to, boolean asSpelled) {
    super(bytes, from, to);
    this.asSpelled = asSpelled;
  }

  static List<Token> lex(byte[] bytes, int from, int to) {
    TokenLexer lexer = new TokenLexer(bytes, from, to, false);
    lexer.run();
    return lexer.out;
  }

  /** As {@link #lex}, but a universal character name in a name stays as it is written. */
  static List<Token> lexAsSpelled(byte[] bytes, int from, int to) {
    TokenLexer lexer = new TokenLexer(bytes, from, to, true);
    lexer.run();
    return lexer.out;
  }

  static List<Token> lex(String latin1) {
    byte[] bytes = latin1.getBytes(StandardCharsets.ISO_8859_1);
    return lex(bytes, 0, bytes.length);
  }

  private void run() {
    while (p < n) {
      int before = p;
      skipBlanks();
      blank |= pastSplices(before) < p;
      if (p >= n) {
        return;
      }
      if (lineEnd(p) > 0) {
        blank = true;
        p += lineEnd(p);
      } else if (atLineComment()) {
        skipLineComment();
        blank = true;
      } else {
        token();
        blank = false;
      }
    }
  }

  private void token() {
    int start = p;
    int c = at(p);
    if (nameStart(c) || c == '\\' && (at(p + 1) == 'u' || at(p + 1) == 'U')) {
      name();
      int quote = at(p);
      if ((quote == '"' || quote == '\'') && literalPrefix(start)) {
        quoted(quote);
        add(quote == '"' ? TokenKind.STRING : TokenKind.CHARACTER, start);
      } else {
        addName(start);
      }
    } else if (digit(c) || c == '.' && digit(at(pastSplices(p + 1)))) {
      number();
      add(TokenKind.NUMBER, start);
    } else if (c == '"' || c == '\'') {
      quoted(c);
      TokenKind kind = c == '"' ? TokenKind.STRING : TokenKind.CHARACTER;
      add(kind, start);
    } else {
      punctuator(start);
    }
  }

  private void name() {
    while (p < n) {
      int c = b[p];
      if (namePart(c) || c == '\\' && (at(p + 1) == 'u' || at(p + 1) == 'U')) {
        p++;
      } else if (splice(p) > 0 && namePart(at(pastSplices(p)))) {
        p = pastSplices(p);
      } else {
        return;
      }
    }
  }

  private boolean literalPrefix(int start) {
    String word = spelling(start, p);
    return switch (word) {
      case "L", "u", "U", "u8" -> true;
      case "R", "LR", "uR", "UR", "u8R" -> at(p) == '"';
      default -> false;
    };
  }

  private void quoted(int quote) {
    if (quote != '"' || !rawString(true)) {
      literal((char) quote);
    }
  }

  private void number() {
    while (p < n) {
      int next = pastSplices(p);
      int c = at(next);
      if (c == 'e' || c == 'E' || c == 'p' || c == 'P') {
        int sign = pastSplices(next + 1);
        p = at(sign) == '+' || at(sign) == '-' ? sign + 1 : next + 1;
      } else if (namePart(c) || c == '.') {
        p = next + 1;
      } else {
        return;
      }
    }
  }

  private void punctuator(int start) {
    int first = at(p);
    for (String candidate : PUNCTUATORS) {
      if (candidate.charAt(0) != first) {
        continue;
      }
      int q = p;
      int matched = 0;
      while (matched < candidate.length() && at(q) == candidate.charAt(matched)) {
        matched++;
        q = matched < candidate.length() ? pastSplices(q + 1) : q + 1;
      }
      if (matched == candidate.length()) {
        p = q;
        out.add(new Token(TokenKind.PUNCTUATOR, candidate, blank, start, null));
        return;
      }
    }
    int c = at(p++);
    boolean known = "[](){}.&*+-~!/%<>^|?:;=,#".indexOf(c) >= 0;
    add(known ? TokenKind.PUNCTUATOR : TokenKind.OTHER, start);
  }

  private void addName(int start) {
    String spelled = spelling(start, p);
    String text = asSpelled ? spelled : MacroName.universal(spelled);
    out.add(new Token(TokenKind.NAME, text, blank, start, null));
  }

  private void add(TokenKind kind, int start) {
    String text = spelling(start, p);
    TokenKind sure = kind;
    if (kind == TokenKind.STRING || kind == TokenKind.CHARACTER) {
      char quote = kind == TokenKind.STRING ? '"' : '\'';
      int open = text.indexOf(quote);
      if (text.length() < open + 2 || text.charAt(text.length() - 1) != quote) {
        sure = TokenKind.OTHER;
      }
    }
    out.add(new Token(sure, text, blank, start, null));
  }

  private String spelling(int from, int to) {
    for (int i = from; i < to; i++) {
      if (b[i] == '\\' && splice(i) > 0) {
        return withoutSplices(from, to);
      }
    }
    return new String(b, from, to - from, StandardCharsets.ISO_8859_1);
  }

  private String withoutSplices(int from, int to) {
    StringBuilder text = new StringBuilder();
    int i = from;
    while (i < to) {
      int length = splice(i);
      if (length > 0) {
        i += length;
      } else {
        text.append((char) (b[i] & 0xff));
        i++;
      }
    }
    return text.toString();
  }
}
