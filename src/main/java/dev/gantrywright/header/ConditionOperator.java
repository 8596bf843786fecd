package dev.gantrywright.header;

import java.util.Deque;
import java.util.List;

/** Names that a condition takes as operators, whose operands are not macro-expanded. */
final class ConditionOperator {
  private ConditionOperator() {}

  /** Moves the operator and its operand to the output if the token is one. */
  static boolean leave(Token token, Deque<Token> in, List<Token> out) {
    if (token.text().equals("defined")) {
      out.add(token);
      boolean paren = !in.isEmpty() && in.peek().is("(");
      if (paren) {
        out.add(in.pop());
      }
      if (!in.isEmpty() && in.peek().isName()) {
        out.add(in.pop());
      }
      return true;
    }
    if (!isQuery(token.text()) || in.isEmpty() || !in.peek().is("(")) {
      return false;
    }
    out.add(token);
    out.add(in.pop());
    boolean computed = isInclude(token.text()) && !in.isEmpty() && in.peek().isName();
    int parens = 1;
    while (!computed && !in.isEmpty() && parens > 0) {
      Token next = in.pop();
      parens += next.is("(") ? 1 : next.is(")") ? -1 : 0;
      out.add(next);
    }
    return true;
  }

  static boolean isInclude(String name) {
    return name.equals("__has_include") || name.equals("__has_include_next");
  }

  /** Whether the name asks the compiler something: {@code __has_include} and its like. */
  static boolean isQuery(String name) {
    return switch (name) {
      case "__has_include",
          "__has_include_next",
          "__has_attribute",
          "__has_cpp_attribute",
          "__has_c_attribute",
          "__has_builtin" ->
          true;
      default -> false;
    };
  }
}
