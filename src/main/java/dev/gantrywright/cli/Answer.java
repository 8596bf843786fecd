package dev.gantrywright.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a calculator found: values under their JSON keys, and the words around them for people. */
final class Answer {
  private record Line(String label, String text) {}

  private final Map<String, Object> values = new LinkedHashMap<>();
  private final List<Line> lines = new ArrayList<>();

  /** A figure, printed to six digits for people and in full in JSON. */
  Answer figure(String key, String label, double value, String unit) {
    values.put(key, value);
    return line(label, unit.isEmpty() ? sixDigits(value) : sixDigits(value) + " " + unit);
  }

  /** A register value: a whole number. */
  Answer register(String key, String label, long value) {
    values.put(key, value);
    return line(label, String.valueOf(value));
  }

  Answer word(String key, String label, String value) {
    values.put(key, value);
    return line(label, value);
  }

  Answer truth(String key, String label, boolean value) {
    values.put(key, value);
    return line(label, value ? "yes" : "no");
  }

  /** A line for people alone: a formula, a source, a remark. */
  Answer line(String label, String text) {
    lines.add(new Line(label, text));
    return this;
  }

  Map<String, Object> values() {
    return values;
  }

  /** The lines for people, labels aligned. */
  List<String> text() {
    int width = lines.stream().mapToInt(line -> line.label().length()).max().orElse(0);
    return lines.stream()
        .map(line -> line.label() + " ".repeat(width - line.label().length() + 2) + line.text())
        .toList();
  }

  static String sixDigits(double value) {
    if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) {
      return value == 0 ? "0" : String.valueOf(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    return rounded.precision() - rounded.scale() > 12 || rounded.scale() > 12
        ? rounded.toString()
        : rounded.toPlainString();
  }
}
