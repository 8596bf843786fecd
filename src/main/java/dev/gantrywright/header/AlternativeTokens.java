package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/**
 * The words that C++ takes as operators everywhere (ISO/IEC 14882:2017 5.5, [lex.digraph]). In C
 * they are macros of {@code <iso646.h>}.
 */
final class AlternativeTokens {
  private AlternativeTokens() {}

  /** The tokens with such words replaced by the operators that they stand for. */
  static List<Token> operators(List<Token> tokens) {
    List<Token> out = null;
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      String operator = token.isName() ? operator(token.text()) : null;
      if (operator != null) {
        out = out == null ? new ArrayList<>(tokens) : out;
        out.set(i, Token.of(TokenKind.PUNCTUATOR, operator, token.blankBefore()));
      }
    }
    return out == null ? tokens : out;
  }

  private static String operator(String word) {
    return switch (word) {
      case "and" -> "&&";
      case "or" -> "||";
      case "not" -> "!";
      case "not_eq" -> "!=";
      case "bitand" -> "&";
      case "bitor" -> "|";
      case "xor" -> "^";
      case "compl" -> "~";
      default -> null;
    };
  }
}
