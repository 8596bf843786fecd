package dev.gantrywright.ui.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number with or without its unit as people type it: {@code 80}, {@code 80 steps/mm},
 * {@code 0,8 A}, {@code 800 mA}, {@code 720 mm/min}, {@code 115 200}.
 */
public final class TypedNumber {
  private static final Pattern SHAPE =
      Pattern.compile(
          "([+\\-\u2212]?(?:\\d[\\d.,' \u00a0\u202f]*|[.,]\\d+)(?:[eE][+\\-]?\\d+)?)\\s*(.*)");

  private static final Pattern GROUPS = Pattern.compile("[+-]?\\d{1,3}(?:[,.]\\d{3})+");

  private final Units units;

  public TypedNumber(Units units) {
    this.units = units;
  }

  /**
   * What was typed, in the field's unit.
   *
   * @param fieldUnit unit that the field holds; empty for a bare number
   * @param whole whether the field takes whole numbers only
   */
  public Reading read(String typed, String fieldUnit, boolean whole) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return new Reading.Nothing();
    }
    if (fieldUnit.isEmpty() && text.matches("1\\s*/\\s*\\d+")) {
      // Microstepping is spoken of as 1/16 and counted as 16.
      return new Reading.Number(Double.parseDouble(text.substring(text.indexOf('/') + 1).strip()));
    }
    Matcher shape = SHAPE.matcher(text);
    if (!shape.matches()) {
      return new Reading.Unread("“" + text + "” is not a number" + example(fieldUnit));
    }
    Optional<Conversion> conversion = units.conversion(fieldUnit, shape.group(2).strip());
    if (conversion.isEmpty()) {
      return new Reading.Unread(
          "unit “" + shape.group(2).strip() + "” not known here" + taken(fieldUnit));
    }
    return number(shape.group(1), whole, conversion.get());
  }

  private static Reading number(String digits, boolean whole, Conversion conversion) {
    String bare =
        digits.replace('\u2212', '-').replaceAll("[' \u00a0\u202f]", "").toLowerCase(Locale.ROOT);
    String plain = bare;
    if (GROUPS.matcher(bare).matches() && (bare.indexOf(',') >= 0 || occursTwice(bare, '.'))) {
      boolean certain = whole || occursTwice(bare, ',') || occursTwice(bare, '.');
      if (!certain) {
        return ambiguous(bare);
      }
      plain = bare.replace(",", "").replace(".", "");
    } else if (bare.indexOf(',') >= 0 && bare.indexOf('.') >= 0) {
      boolean commaLast = bare.lastIndexOf(',') > bare.lastIndexOf('.');
      plain = commaLast ? bare.replace(".", "").replace(',', '.') : bare.replace(",", "");
    } else {
      plain = bare.replace(',', '.');
    }
    try {
      return checked(conversion.apply(Double.parseDouble(plain)), whole, digits);
    } catch (NumberFormatException twoPoints) {
      return new Reading.Unread("“" + digits.strip() + "” is not a number");
    }
  }

  private static Reading ambiguous(String bare) {
    return new Reading.Unread(
        "“"
            + bare
            + "” may be "
            + bare.replace(",", "")
            + " or "
            + bare.replace(',', '.')
            + ": type one of these");
  }

  private static boolean occursTwice(String text, char mark) {
    return text.indexOf(mark) >= 0 && text.indexOf(mark) != text.lastIndexOf(mark);
  }

  private static Reading checked(double value, boolean whole, String digits) {
    if (!Double.isFinite(value)) {
      return new Reading.Unread("“" + digits.strip() + "” is out of reach");
    }
    double rounded = Math.rint(value);
    if (whole && Math.abs(value - rounded) > 1e-9) {
      return new Reading.Unread(
          "“" + digits.strip() + "” gives " + Shown.number(value) + ": a whole number is needed");
    }
    // A conversion such as 720 mm/min leaves binary dust; nobody types beyond twelve digits.
    return new Reading.Number(
        whole
            ? rounded
            : new java.math.BigDecimal(value).round(new java.math.MathContext(12)).doubleValue());
  }

  private String example(String fieldUnit) {
    return fieldUnit.isEmpty() ? "" : ": type for example 12 " + fieldUnit;
  }

  private String taken(String fieldUnit) {
    return units.taken(fieldUnit).isEmpty()
        ? ": type the number alone"
        : ": use " + String.join(", ", units.taken(fieldUnit).stream().limit(4).toList());
  }
}
