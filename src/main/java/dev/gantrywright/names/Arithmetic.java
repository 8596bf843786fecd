package dev.gantrywright.names;

import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number that a macro's replacement comes to: literals, {@code + - * / %}, parentheses, casts,
 * and other macros by name. Whole numbers divide as in C, towards zero (ISO/IEC 9899:2018 6.5.5).
 */
public final class Arithmetic {
  /** A number and whether C would hold it as an integer. */
  private record Num(double value, boolean whole) {}

  private static final int DEEPEST = 32;

  /** The arithmetic types of ISO/IEC 9899:2018 6.2.5 and 7.20.1. */
  private static final Pattern CAST =
      Pattern.compile(
          "\\s*((?:(?:const|unsigned|signed|float|double|char|short|int|long|size_t"
              + "|u?int(?:_fast|_least)?(?:8|16|32|64)_t|u?intmax_t)\\s*)+)\\)");

  private final String text;
  private final Function<String, Optional<String>> macros;
  private final Set<String> open;
  private final int depth;
  private int at;

  private Arithmetic(
      String text, Function<String, Optional<String>> macros, Set<String> open, int depth) {
    this.text = text;
    this.macros = macros;
    this.open = open;
    this.depth = depth;
  }

  /** The number in a text that names no other macro; empty where it is none. */
  public static OptionalDouble of(String text) {
    return of(text, name -> Optional.empty());
  }

  /**
   * The number that a text comes to.
   *
   * @param macros the replacement of a macro, empty where it is unknown
   * @return empty where the text is no number, or names an unknown macro or itself
   */
  public static OptionalDouble of(String text, Function<String, Optional<String>> macros) {
    Optional<Num> number = number(text, macros, new HashSet<>(), 0);
    return number.isPresent() ? OptionalDouble.of(number.get().value()) : OptionalDouble.empty();
  }

  private static Optional<Num> number(
      String text, Function<String, Optional<String>> macros, Set<String> open, int depth) {
    if (depth > DEEPEST || text.isBlank()) {
      return Optional.empty();
    }
    Arithmetic reading = new Arithmetic(text, macros, open, depth);
    try {
      Num value = reading.sum();
      reading.space();
      boolean good = reading.at == text.length() && Double.isFinite(value.value());
      return good ? Optional.of(value) : Optional.empty();
    } catch (NotANumber no) {
      return Optional.empty();
    }
  }

  /** Ends the reading of a text that is no number; never leaves this class. */
  private static final class NotANumber extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotANumber() {
      super(null, null, false, false);
    }
  }

  private Num sum() {
    Num left = product();
    while (true) {
      if (take('+')) {
        Num right = product();
        left = new Num(left.value() + right.value(), left.whole() && right.whole());
      } else if (take('-')) {
        Num right = product();
        left = new Num(left.value() - right.value(), left.whole() && right.whole());
      } else {
        return left;
      }
    }
  }

  private Num product() {
    Num left = signed();
    while (true) {
      if (take('*')) {
        Num right = signed();
        left = new Num(left.value() * right.value(), left.whole() && right.whole());
      } else if (take('/')) {
        left = quotient(left, signed());
      } else if (take('%')) {
        Num right = signed();
        if (right.value() == 0) {
          throw new NotANumber();
        }
        left = new Num(left.value() % right.value(), left.whole() && right.whole());
      } else {
        return left;
      }
    }
  }

  private static Num quotient(Num left, Num right) {
    if (right.value() == 0) {
      throw new NotANumber();
    }
    double exact = left.value() / right.value();
    boolean whole = left.whole() && right.whole();
    return new Num(whole ? (exact < 0 ? Math.ceil(exact) : Math.floor(exact)) : exact, whole);
  }

  private Num signed() {
    if (take('-')) {
      Num value = signed();
      return new Num(-value.value(), value.whole());
    }
    if (take('+')) {
      return signed();
    }
    return primary();
  }

  private Num primary() {
    if (take('(')) {
      String cast = cast();
      if (cast != null) {
        Num value = signed();
        boolean real = cast.contains("float") || cast.contains("double");
        double cut = value.value() < 0 ? Math.ceil(value.value()) : Math.floor(value.value());
        return new Num(real ? value.value() : cut, !real);
      }
      Num value = sum();
      if (!take(')')) {
        throw new NotANumber();
      }
      return value;
    }
    space();
    if (at >= text.length()) {
      throw new NotANumber();
    }
    char c = text.charAt(at);
    if (Character.isDigit(c) || c == '.') {
      return literal();
    }
    return named();
  }

  /** The words of a type and the bracket that closes a cast to it; null where none stands here. */
  private String cast() {
    Matcher type = CAST.matcher(text).region(at, text.length());
    if (!type.lookingAt()) {
      return null;
    }
    at = type.end();
    return type.group(1);
  }

  private Num literal() {
    int start = at;
    while (at < text.length() && literalPart(start)) {
      at++;
    }
    String body = text.substring(start, at);
    try {
      if (body.startsWith("0x") || body.startsWith("0X")) {
        return new Num(Long.decode(body.replaceAll("[uUlL]+$", "").replace("'", "")), true);
      }
      int end = body.length();
      boolean real = false;
      while (end > 0 && "uUlLfF".indexOf(body.charAt(end - 1)) >= 0) {
        end--;
        real |= body.charAt(end) == 'f' || body.charAt(end) == 'F';
      }
      String plain = body.substring(0, end).replace("'", "");
      boolean whole = !real && plain.chars().allMatch(Character::isDigit);
      return new Num(Double.parseDouble(plain), whole);
    } catch (NumberFormatException no) {
      throw new NotANumber();
    }
  }

  private boolean literalPart(int start) {
    char c = text.charAt(at);
    // digit groups: ISO/IEC 9899:2024 6.4.4.1
    boolean group = c == '\'' && at + 1 < text.length() && at > start;
    if (Character.isLetterOrDigit(c)
        || c == '.'
        || group && Character.isLetterOrDigit(text.charAt(at + 1))) {
      return true;
    }
    char before = at > start ? text.charAt(at - 1) : ' ';
    return (c == '+' || c == '-')
        && (before == 'e' || before == 'E')
        && !text.startsWith("0x", start);
  }

  private Num named() {
    int start = at;
    while (at < text.length() && Character.isJavaIdentifierPart(text.charAt(at))) {
      at++;
    }
    String name = text.substring(start, at);
    if (name.isEmpty() || !open.add(name)) {
      throw new NotANumber();
    }
    Optional<Num> value = macros.apply(name).flatMap(body -> number(body, macros, open, depth + 1));
    open.remove(name);
    return value.orElseThrow(NotANumber::new);
  }

  private boolean take(char wanted) {
    space();
    if (at < text.length() && text.charAt(at) == wanted) {
      at++;
      return true;
    }
    return false;
  }

  private void space() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }
}
