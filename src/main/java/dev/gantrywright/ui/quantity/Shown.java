package dev.gantrywright.ui.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as the window shows them. */
public final class Shown {
  private Shown() {}

  /** Up to nine significant digits, no trailing zeros, no exponent: {@code 80}, {@code 0.11}. */
  public static String number(double value) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    BigDecimal decimal = new BigDecimal(value).round(new MathContext(9)).stripTrailingZeros();
    return decimal.signum() == 0 ? "0" : decimal.toPlainString();
  }

  /** Long numbers in groups of three with a no-break space, after ISO 80000-1, 7.3.1. */
  public static String grouped(double value) {
    String plain = number(value);
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String rest = point < 0 ? "" : plain.substring(point);
    StringBuilder out = new StringBuilder();
    int start = whole.startsWith("-") ? 1 : 0;
    int digits = whole.length() - start;
    if (digits <= 4) {
      return plain;
    }
    out.append(whole, 0, start);
    for (int i = start; i < whole.length(); i++) {
      if (i > start && (whole.length() - i) % 3 == 0) {
        out.append('\u00a0');
      }
      out.append(whole.charAt(i));
    }
    return out + rest;
  }

  /**
   * With its unit: {@code 80 steps/mm}, {@code 0.8 A}; the degree sign of an angle stands close.
   */
  public static String with(double value, String unit) {
    return unit.isEmpty() ? grouped(value) : grouped(value) + "\u00a0" + unit;
  }

  /** Three significant digits, for what is measured or derived. */
  public static String rough(double value) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(3));
    return grouped(rounded.doubleValue());
  }
}
