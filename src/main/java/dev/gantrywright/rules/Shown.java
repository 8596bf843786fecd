package dev.gantrywright.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as evidence shows them: no more digits than they deserve, one spelling everywhere. */
public final class Shown {
  private Shown() {}

  /** At most five significant digits, no exponent, no trailing zeros. */
  public static String n(double value) {
    if (!Double.isFinite(value)) {
      return "no number";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(5, RoundingMode.HALF_UP));
    if (rounded.signum() == 0) {
      return "0";
    }
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** A whole number with every digit. */
  public static String n(long value) {
    return Long.toString(value);
  }

  /** Signed percent with two digits after the point. */
  public static String percent(double value) {
    return String.format(Locale.ROOT, "%+.2f %%", value);
  }

  /** An address or offset. */
  public static String hex(long value) {
    return "0x" + Long.toHexString(value).toUpperCase(Locale.ROOT);
  }

  /** A rate in Hz or kHz. */
  public static String hertz(double value) {
    return value >= 1_000_000
        ? n(value / 1e6) + " MHz"
        : value >= 1000 ? n(value / 1e3) + " kHz" : n(value) + " Hz";
  }
}
