package dev.gantrywright.header;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;

/**
 * Macro replacement (C17 6.10.3) after Dave Prosser's algorithm of hide sets, with a bound on the
 * work so that no input can make it run away.
 */
final class MacroExpander {
  /** Most tokens that one expansion may make; far above what a header needs. */
  private static final int MOST_TOKENS = 200_000;

  /** Most tokens that one expansion may look at as arguments, those of unclosed calls too. */
  private static final int MOST_READ = 4_000_000;

  private static final int MOST_NESTING = 200;

  /** Hidden names that are looked through in about the time that a token takes to make. */
  private static final int NAMES_A_TOKEN = 16;

  /** What a name expands to: its macro, or null to leave the name alone. */
  private final Function<String, MacroBody> macros;

  private final boolean inCondition;
  private final int allowed;
  private int made;
  private int read;
  private int depth;

  MacroExpander(Function<String, MacroBody> macros) {
    this(macros, false, MOST_READ);
  }

  /**
   * In a condition the operands of {@code defined} and its like are left alone.
   *
   * @param allowed how many tokens it may make, or read as arguments, at most
   */
  MacroExpander(Function<String, MacroBody> macros, boolean inCondition, int allowed) {
    this.allowed = allowed;
    this.macros = macros;
    this.inCondition = inCondition;
  }

  /** How many tokens were made, and read as arguments. */
  int spent() {
    return made + read;
  }

  /** Replaces every macro in the tokens. */
  List<Token> expand(List<Token> tokens) {
    if (++depth > MOST_NESTING) {
      throw new ExpansionLimit("macro arguments are nested too deeply");
    }
    Deque<Token> in = new ArrayDeque<>(tokens.size() + 1);
    for (int i = 0; i < tokens.size(); i++) {
      in.addLast(tokens.get(i));
    }
    List<Token> out = new ArrayList<>();
    while (!in.isEmpty()) {
      Token token = in.pop();
      if (!token.isName() || HideSet.contains(token.hidden(), token.text())) {
        out.add(token);
        continue;
      }
      if (inCondition && ConditionOperator.leave(token, in, out)) {
        continue;
      }
      MacroBody macro = macros.apply(token.text());
      if (macro == null) {
        out.add(token);
      } else if (!macro.functionLike()) {
        HideSet hidden = HideSet.add(token.hidden(), token.text());
        push(in, new MacroSubstitution(this, macro, List.of()).run(), hidden, token);
      } else if (in.isEmpty() || !in.peek().is("(")) {
        out.add(token);
      } else {
        call(token, macro, in, out);
      }
    }
    depth--;
    return out;
  }

  private void call(Token name, MacroBody macro, Deque<Token> in, List<Token> out) {
    List<Token> taken = new ArrayList<>();
    List<List<Token>> arguments = new ArrayList<>();
    Token close = arguments(macro, in, taken, arguments);
    looked(taken.size() + macro.parameters().size());
    if (close == null) { // the call is not closed: nothing is replaced
      out.add(name);
      for (int i = taken.size() - 1; i >= 0; i--) {
        in.push(taken.get(i));
      }
      out.add(in.pop());
      return;
    }
    HideSet both = HideSet.intersection(name.hidden(), close.hidden());
    HideSet hidden = HideSet.add(both, name.text());
    push(in, new MacroSubstitution(this, macro, arguments).run(), hidden, name);
  }

  /** Takes the arguments of a call off the input; the closing parenthesis, or null. */
  private static Token arguments(
      MacroBody macro, Deque<Token> in, List<Token> taken, List<List<Token>> arguments) {
    int fixed = macro.parameters().size() - (macro.variadic() ? 1 : 0);
    List<Token> current = new ArrayList<>();
    int parens = 0;
    taken.add(in.pop());
    while (!in.isEmpty()) {
      Token token = in.pop();
      taken.add(token);
      if (token.is(")") && parens == 0) {
        if (!arguments.isEmpty() || !current.isEmpty() || !macro.parameters().isEmpty()) {
          arguments.add(current);
        }
        while (arguments.size() < macro.parameters().size()) {
          arguments.add(new ArrayList<>());
        }
        return token;
      }
      boolean rest = macro.variadic() && arguments.size() >= fixed;
      if (token.is(",") && parens == 0 && !rest) {
        arguments.add(current);
        current = new ArrayList<>();
        continue;
      }
      parens += token.is("(") ? 1 : token.is(")") ? -1 : 0;
      current.add(token);
    }
    return null;
  }

  /**
   * Ends an expansion that makes too much.
   *
   * @param more tokens that a replacement holds so far, not counted yet
   */
  void bound(int more) {
    int most = Math.min(allowed, MOST_TOKENS);
    if (made + more > most) {
      throw new ExpansionLimit("a macro expands to more than " + most + " tokens");
    }
  }

  /** Replaces every macro in an argument, as often as its parameter stands in the replacement. */
  List<Token> argument(List<Token> tokens) {
    looked(tokens.size());
    return expand(tokens);
  }

  private void looked(int tokens) {
    read += tokens;
    if (read > Math.min(allowed, MOST_READ)) {
      throw new ExpansionLimit("macro calls are nested or left open without end");
    }
  }

  private void push(Deque<Token> in, List<Token> replaced, HideSet hidden, Token origin) {
    made += replaced.size() * (1 + HideSet.size(hidden) / NAMES_A_TOKEN);
    bound(0);
    for (int i = replaced.size() - 1; i >= 0; i--) {
      Token token = replaced.get(i);
      HideSet both = HideSet.union(token.hidden(), hidden);
      Token ready = token.hiddenBy(both);
      in.push(i == 0 ? ready.withBlank(origin.blankBefore()) : ready);
    }
  }
}
