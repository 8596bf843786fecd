package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/** Puts arguments into a replacement list: {@code #}, {@code ##} and plain (C17 6.10.3.1 to .3). */
final class MacroSubstitution {
  /** Characters that {@code #} and {@code ##} may write for each token that may be made. */
  private static final int CHARACTERS_A_TOKEN = 16;

  private final MacroExpander expander;
  private final MacroBody macro;
  private final List<List<Token>> arguments;
  private final List<Token> out = new ArrayList<>();
  private int spelled;

  MacroSubstitution(MacroExpander expander, MacroBody macro, List<List<Token>> arguments) {
    this.expander = expander;
    this.macro = macro;
    this.arguments = arguments;
  }

  List<Token> run() {
    List<Token> body = macro.tokens();
    for (int i = 0; i < body.size(); i++) {
      Token token = body.get(i);
      if (isPaste(token) && i > 0 && i + 1 < body.size()) {
        i = pasteNext(body, i);
      } else if (isHash(token) && i + 1 < body.size() && macro.indexOf(body.get(i + 1)) >= 0) {
        out.add(stringized(argument(body.get(++i)), token.blankBefore()));
      } else if (macro.indexOf(token) >= 0) {
        boolean pasted = i + 1 < body.size() && isPaste(body.get(i + 1));
        List<Token> argument = argument(token);
        add(pasted ? orPlacemarker(argument) : expander.argument(argument), token.blankBefore());
      } else {
        out.add(token);
      }
      expander.bound(out.size() + spelled / CHARACTERS_A_TOKEN);
    }
    return withoutPlacemarkers();
  }

  private List<Token> withoutPlacemarkers() {
    int kept = 0;
    for (int i = 0; i < out.size(); i++) {
      if (out.get(i).kind() != TokenKind.PLACEMARKER) {
        out.set(kept++, out.get(i));
      }
    }
    out.subList(kept, out.size()).clear();
    return out;
  }

  /** Pastes the operand behind {@code ##} to the last token; the index of that operand's end. */
  private int pasteNext(List<Token> body, int at) {
    int next = at + 1;
    Token operand = body.get(next);
    if (isHash(operand)
        && macro.functionLike()
        && next + 1 < body.size()
        && macro.indexOf(body.get(next + 1)) >= 0) {
      paste(List.of(stringized(argument(body.get(next + 1)), false)));
      return next + 1;
    }
    if (macro.indexOf(operand) < 0) {
      paste(List.of(operand));
      return next;
    }
    List<Token> argument = argument(operand);
    boolean rest = macro.variadic() && macro.indexOf(operand) == macro.parameters().size() - 1;
    if (rest && last() != null && last().is(",")) { // GNU: the comma goes with an empty rest
      if (argument.isEmpty()) {
        out.remove(out.size() - 1);
      } else {
        add(argument, operand.blankBefore());
      }
      return next;
    }
    paste(orPlacemarker(argument));
    return next;
  }

  private Token last() {
    return out.isEmpty() ? null : out.get(out.size() - 1);
  }

  private void paste(List<Token> operand) {
    if (out.isEmpty()) {
      out.addAll(operand);
      return;
    }
    Token left = out.remove(out.size() - 1);
    Token right = operand.get(0);
    if (left.kind() == TokenKind.PLACEMARKER) {
      out.add(right.withBlank(left.blankBefore()));
    } else if (right.kind() == TokenKind.PLACEMARKER) {
      out.add(left);
    } else {
      List<Token> glued = TokenLexer.lex(left.text() + right.text());
      spelled += left.text().length() + right.text().length();
      HideSet hidden = HideSet.intersection(left.hidden(), right.hidden());
      for (int i = 0; i < glued.size(); i++) {
        Token token = Token.of(glued.get(i).kind(), glued.get(i).text(), i > 0);
        out.add(token.withBlank(i == 0 && left.blankBefore()).hiddenBy(hidden));
      }
    }
    out.addAll(operand.subList(1, operand.size()));
  }

  private void add(List<Token> tokens, boolean blankBefore) {
    for (int i = 0; i < tokens.size(); i++) {
      out.add(i == 0 ? tokens.get(0).withBlank(blankBefore) : tokens.get(i));
    }
  }

  private List<Token> argument(Token parameter) {
    int index = macro.indexOf(parameter);
    return index < arguments.size() ? arguments.get(index) : List.of();
  }

  private static List<Token> orPlacemarker(List<Token> argument) {
    return argument.isEmpty() ? List.of(Token.of(TokenKind.PLACEMARKER, "", false)) : argument;
  }

  private boolean isHash(Token token) {
    return macro.functionLike() && (token.is("#") || token.is("%:"));
  }

  private static boolean isPaste(Token token) {
    return token.is("##") || token.is("%:%:");
  }

  /** The {@code #} operator (C17 6.10.3.2). */
  private Token stringized(List<Token> argument, boolean blankBefore) {
    StringBuilder text = new StringBuilder("\"");
    for (int i = 0; i < argument.size(); i++) {
      Token token = argument.get(i);
      if (i > 0 && token.blankBefore()) {
        text.append(' ');
      }
      boolean literal = token.kind() == TokenKind.STRING || token.kind() == TokenKind.CHARACTER;
      for (int k = 0; k < token.text().length(); k++) {
        char c = token.text().charAt(k);
        if (literal && (c == '"' || c == '\\')) {
          text.append('\\');
        }
        text.append(c);
      }
    }
    spelled += text.length();
    return Token.of(TokenKind.STRING, text.append('"').toString(), blankBefore);
  }
}
