package dev.gantrywright.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as evidence shows them: no more digits than they deserve, one spelling everywhere. */
public final class Shown {
  /** Powers of ten from 1 to 1e16; a double holds each exactly. */
  private static final double[] TEN = new double[17];

  static {
    double power = 1;
    for (int at = 0; at < TEN.length; at++) {
      TEN[at] = power;
      power *= 10;
    }
  }

  private static final int DIGITS = 5;

  /**
   * A multiplication by a power of ten errs by some 1e-11 of the last digit; this is far beyond.
   */
  private static final double DOUBT = 1e-6;

  private Shown() {}

  /** At most five significant digits, no exponent, no trailing zeros. */
  public static String n(double value) {
    if (!Double.isFinite(value)) {
      return "no number";
    }
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (size >= 1e-6 && size < 1e12) {
      String quick = quick(value < 0, size);
      if (quick != null) {
        return quick;
      }
    }
    return exact(value);
  }

  /** The same by way of the exact decimal expansion. */
  static String exact(double value) {
    return new BigDecimal(value)
        .round(new MathContext(DIGITS, RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Several times as fast; null where binary fractions leave the last digit in doubt. */
  private static String quick(boolean negative, double size) {
    int places = 0;
    double scaled = size;
    while (scaled >= TEN[DIGITS]) {
      places--;
      scaled = size / TEN[-places];
    }
    while (scaled < TEN[DIGITS - 1]) {
      places++;
      scaled = size * TEN[places];
    }
    double whole = Math.floor(scaled);
    double rest = scaled - whole;
    if (Math.abs(rest - 0.5) < DOUBT) {
      return null;
    }
    return plain(negative, (long) whole + (rest > 0.5 ? 1 : 0), places);
  }

  /** The number {@code digits} / 10^{@code places}, without trailing zeros. */
  private static String plain(boolean negative, long digits, int places) {
    long left = digits;
    int point = places;
    while (point > 0 && left % 10 == 0) {
      left /= 10;
      point--;
    }
    StringBuilder text = new StringBuilder(16);
    if (negative) {
      text.append('-');
    }
    if (point <= 0) {
      return text.append(left * (long) TEN[-point]).toString();
    }
    long unit = (long) TEN[point];
    text.append(left / unit).append('.');
    String behind = Long.toString(left % unit);
    for (int zeros = point - behind.length(); zeros > 0; zeros--) {
      text.append('0');
    }
    return text.append(behind).toString();
  }

  /**
   * A computed figure, three significant digits: no more than the facts behind it deserve. Values
   * that a remedy sets are shown by {@link #n(double)}.
   */
  public static String about(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      return n(value);
    }
    int places = 2 - (int) Math.floor(Math.log10(Math.abs(value)));
    double unit = Math.pow(10, Math.abs(places));
    return n(places < 0 ? Math.rint(value / unit) * unit : Math.rint(value * unit) / unit);
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
