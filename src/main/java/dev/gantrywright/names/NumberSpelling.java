package dev.gantrywright.names;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number in the style of the one that it replaces. */
final class NumberSpelling {
  private static final MathContext TWELVE_DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

  /** A literal behind a cast: {@code (uint16_t)900}. */
  private static final Pattern CAST =
      Pattern.compile("(\\([A-Za-z_][\\w ]*\\)\\s*)([-+]?[\\d.][\\w.]*)");

  private static final Pattern LITERAL =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?[uUlLfF]*");

  private static final Pattern SUFFIX = Pattern.compile("^.*?([uUlLfF]*)$");

  private NumberSpelling() {}

  /**
   * The number as text: parentheses, a cast, a decimal point and a type suffix are kept where the
   * present text has them.
   */
  static String like(String current, double value) {
    String inner = current.strip();
    int layers = 0;
    while (inner.length() > 2 && inner.startsWith("(") && inner.endsWith(")")) {
      inner = inner.substring(1, inner.length() - 1).strip();
      layers++;
    }
    Matcher cast = CAST.matcher(inner);
    if (cast.matches()) {
      String open = "(".repeat(layers) + cast.group(1);
      return open + like(cast.group(2), value) + ")".repeat(layers);
    }
    boolean literal = LITERAL.matcher(inner).matches();
    String digits = digits(value);
    String text = digits;
    if (literal) {
      boolean real = inner.indexOf('.') >= 0 || inner.indexOf('e') > 0 || inner.indexOf('E') > 0;
      if (real && digits.indexOf('.') < 0) {
        text = digits + ".0";
      }
      text += suffix(inner, text);
    }
    return "(".repeat(literal ? layers : 0) + text + ")".repeat(literal ? layers : 0);
  }

  /** Plain digits, at most twelve that count, without trailing zeros. */
  static String digits(double value) {
    BigDecimal exact = new BigDecimal(value).round(TWELVE_DIGITS).stripTrailingZeros();
    return exact.signum() == 0 ? "0" : exact.toPlainString();
  }

  private static String suffix(String inner, String text) {
    String suffix = SUFFIX.matcher(inner).replaceAll("$1");
    boolean real = suffix.equalsIgnoreCase("f");
    if (real) {
      return text.indexOf('.') < 0 ? ".0" + suffix : suffix;
    }
    boolean unsigned = suffix.indexOf('u') >= 0 || suffix.indexOf('U') >= 0;
    return text.indexOf('.') >= 0 || (unsigned && text.startsWith("-")) ? "" : suffix;
  }
}
