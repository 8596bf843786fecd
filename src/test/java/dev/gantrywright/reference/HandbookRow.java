package dev.gantrywright.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One row of the handbook: a quantity with its inputs, the expected value and the source. */
public record HandbookRow(
    String id,
    String group,
    String quantity,
    Map<String, String> inputs,
    String expected,
    String unit,
    String tolerance,
    String source) {

  public static List<HandbookRow> all() {
    return CsvTable.read("handbook-values.csv").stream().map(HandbookRow::of).toList();
  }

  private static HandbookRow of(Map<String, String> row) {
    Map<String, String> inputs = new LinkedHashMap<>();
    for (String input : row.get("inputs").split("; ")) {
      int equals = input.indexOf('=');
      inputs.put(input.substring(0, equals), input.substring(equals + 1));
    }
    return new HandbookRow(
        row.get("id"),
        row.get("group"),
        row.get("quantity"),
        inputs,
        row.get("expected"),
        row.get("unit"),
        row.get("tolerance"),
        row.get("source"));
  }

  public String formula() {
    return inputs.get("formula");
  }

  public boolean fact() {
    return formula().equals("fact");
  }

  public String text(String input) {
    String value = inputs.get(input);
    if (value == null) {
      throw new IllegalStateException(id + " has no input " + input);
    }
    return value;
  }

  public boolean has(String input) {
    return inputs.containsKey(input);
  }

  public double number(String input) {
    return numberOf(text(input));
  }

  public int whole(String input) {
    return (int) number(input);
  }

  public boolean flag(String input) {
    return number(input) == 1;
  }

  /** True where the printed figure is known to be wrong, so that the formula's value counts. */
  public boolean misprinted() {
    return source.contains("PUBLISHED VALUE DISAGREES");
  }

  static double numberOf(String text) {
    return text.startsWith("0x") ? Long.decode(text) : Double.parseDouble(text);
  }
}
