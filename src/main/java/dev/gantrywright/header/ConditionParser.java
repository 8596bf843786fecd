package dev.gantrywright.header;

import java.util.List;
import java.util.Map;

/** Evaluates the expression of {@code #if} (C17 6.10.1, 6.6) after macro replacement. */
final class ConditionParser {
  private static final int MOST_NESTING = 250;

  private static final Map<String, Integer> PRECEDENCE =
      Map.ofEntries(
          Map.entry("||", 1),
          Map.entry("&&", 2),
          Map.entry("|", 3),
          Map.entry("^", 4),
          Map.entry("&", 5),
          Map.entry("==", 6),
          Map.entry("!=", 6),
          Map.entry("<", 7),
          Map.entry(">", 7),
          Map.entry("<=", 7),
          Map.entry(">=", 7),
          Map.entry("<<", 8),
          Map.entry(">>", 8),
          Map.entry("+", 9),
          Map.entry("-", 9),
          Map.entry("*", 10),
          Map.entry("/", 10),
          Map.entry("%", 10));

  private final List<Token> tokens;
  private final ConditionNames names;
  private int at;
  private int depth;

  private ConditionParser(List<Token> tokens, ConditionNames names) {
    this.tokens = tokens;
    this.names = names;
  }

  /**
   * The value of the expression that the tokens make.
   *
   * @throws ConditionError when they make none
   */
  static CValue evaluate(List<Token> tokens, ConditionNames names) {
    ConditionParser parser = new ConditionParser(tokens, names);
    if (tokens.isEmpty()) {
      throw new ConditionError("the condition is empty");
    }
    CValue value = parser.comma(true);
    if (parser.at < tokens.size()) {
      throw new ConditionError("\"" + parser.peek().text() + "\" is not expected here");
    }
    return value;
  }

  private Token peek() {
    return at < tokens.size() ? tokens.get(at) : null;
  }

  private boolean take(String punctuator) {
    if (at < tokens.size() && tokens.get(at).is(punctuator)) {
      at++;
      return true;
    }
    return false;
  }

  private CValue comma(boolean live) {
    CValue value = conditional(live);
    while (take(",")) {
      value = conditional(live);
    }
    return value;
  }

  /** {@code live} is false where a short circuit leaves the operand unevaluated. */
  private CValue conditional(boolean live) {
    if (++depth > MOST_NESTING) {
      throw new ExpansionLimit("the condition is nested too deeply");
    }
    CValue condition = binary(1, live);
    if (take("?")) {
      Truth truth = condition.truth();
      CValue yes = comma(live && truth != Truth.FALSE);
      if (!take(":")) {
        throw new ConditionError("\"?\" lacks its \":\"");
      }
      CValue no = conditional(live && truth != Truth.TRUE);
      boolean unsigned = yes.unsigned() || no.unsigned();
      boolean same = yes.known() && no.known() && yes.bits() == no.bits();
      condition =
          switch (truth) {
            case TRUE -> yes.asUnsigned(unsigned);
            case FALSE -> no.asUnsigned(unsigned);
            case UNKNOWN -> same ? yes.asUnsigned(unsigned) : CValue.UNKNOWN;
          };
    }
    depth--;
    return condition;
  }

  private CValue binary(int lowest, boolean live) {
    CValue left = unary(live);
    while (true) {
      Token op = peek();
      Integer precedence =
          op == null || op.kind() != TokenKind.PUNCTUATOR ? null : PRECEDENCE.get(op.text());
      if (precedence == null || precedence < lowest) {
        return left;
      }
      at++;
      left =
          switch (op.text()) {
            case "&&" -> and(left, precedence, live);
            case "||" -> or(left, precedence, live);
            default -> {
              CValue right = binary(precedence + 1, live);
              yield live ? Arithmetic.apply(op.text(), left, right) : dead(left, right, precedence);
            }
          };
    }
  }

  /** An operation that is not evaluated still has a type. */
  private static CValue dead(CValue left, CValue right, int precedence) {
    boolean comparison = precedence == 6 || precedence == 7;
    return new CValue(0, !comparison && (left.unsigned() || right.unsigned()), true);
  }

  private CValue and(CValue left, int precedence, boolean live) {
    Truth a = left.truth();
    Truth b = binary(precedence + 1, live && a != Truth.FALSE).truth();
    if (a == Truth.FALSE) {
      return CValue.ZERO;
    }
    return b == Truth.FALSE ? CValue.ZERO : CValue.of(a == Truth.UNKNOWN ? a : b);
  }

  private CValue or(CValue left, int precedence, boolean live) {
    Truth a = left.truth();
    Truth b = binary(precedence + 1, live && a != Truth.TRUE).truth();
    if (a == Truth.TRUE) {
      return CValue.ONE;
    }
    return b == Truth.TRUE ? CValue.ONE : CValue.of(a == Truth.UNKNOWN ? a : b);
  }

  private CValue unary(boolean live) {
    Token token = peek();
    if (token == null) {
      throw new ConditionError("the condition breaks off");
    }
    at++;
    switch (token.kind()) {
      case NUMBER:
        return NumberReader.integer(token.text());
      case CHARACTER:
        return NumberReader.character(token.text());
      case NAME:
        return name(token);
      case PUNCTUATOR:
        return punctuated(token, live);
      default:
        throw new ConditionError("\"" + token.text() + "\" cannot stand in a condition");
    }
  }

  private CValue punctuated(Token token, boolean live) {
    if (++depth > MOST_NESTING) {
      throw new ExpansionLimit("the condition is nested too deeply");
    }
    CValue value;
    switch (token.text()) {
      case "(" -> {
        value = comma(live);
        if (!take(")")) {
          throw new ConditionError("a \")\" is missing");
        }
      }
      case "!", "-", "+", "~" -> value = Arithmetic.unary(token.text(), unary(live));
      default ->
          throw new ConditionError("\"" + token.text() + "\" is not expected in the condition");
    }
    depth--;
    return value;
  }

  private CValue name(Token token) {
    String word = token.text();
    switch (word) {
      case "defined":
        return defined();
      case "__has_include", "__has_include_next":
        if (peek() != null && peek().is("(")) {
          String header = argument();
          return CValue.of(names.hasInclude(header, word.endsWith("next")));
        }
        break;
      default:
        break;
    }
    if (peek() != null && peek().is("(")) {
      int resume = at;
      CValue value = names.call(word, argument());
      if (value != null) {
        return value;
      }
      at = resume;
      throw new ConditionError("\"" + word + "\" is not a function-like macro here");
    }
    return names.leftOver(word);
  }

  private CValue defined() {
    boolean paren = take("(");
    Token name = peek();
    if (name == null || !name.isName()) {
      throw new ConditionError("\"defined\" wants a macro name");
    }
    at++;
    if (paren && !take(")")) {
      throw new ConditionError("\"defined\" lacks its \")\"");
    }
    return CValue.of(names.defined(name.text()));
  }

  /** The text between the parentheses that follow. */
  private String argument() {
    int open = at++;
    int parens = 1;
    while (at < tokens.size() && parens > 0) {
      parens += tokens.get(at).is("(") ? 1 : tokens.get(at).is(")") ? -1 : 0;
      at++;
    }
    if (parens > 0) {
      throw new ConditionError("a \")\" is missing");
    }
    return Token.spell(tokens.subList(open + 1, at - 1));
  }
}
