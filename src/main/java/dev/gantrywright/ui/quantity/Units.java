package dev.gantrywright.ui.quantity;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The units that can be typed into a field, by the unit that the field holds. */
public final class Units {
  private final Map<String, Map<String, Conversion>> byField;

  private Units(Map<String, Map<String, Conversion>> byField) {
    this.byField = byField;
  }

  /** Reads the table that ships with the window, {@code units.json}. */
  public static Units shipped() {
    try (InputStream in =
        Units.class.getResourceAsStream("/dev/gantrywright/ui/quantity/units.json")) {
      JsonNode units = JsonMapper.shared().readTree(in).get("units");
      Map<String, Map<String, Conversion>> byField = new LinkedHashMap<>();
      for (Map.Entry<String, JsonNode> field : units.properties()) {
        Map<String, Conversion> typed = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> unit : field.getValue().properties()) {
          typed.put(unit.getKey(), read(unit.getValue()));
        }
        byField.put(field.getKey(), typed);
      }
      return new Units(byField);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static Conversion read(JsonNode row) {
    return new Conversion(
        number(row, "factor", 1),
        number(row, "per", 1),
        number(row, "offset", 0),
        number(row, "over", 0));
  }

  private static double number(JsonNode row, String key, double otherwise) {
    return row.has(key) ? row.get(key).asDouble() : otherwise;
  }

  /** Units that a field in this unit takes, the field's own first; empty where only numbers go. */
  public Set<String> taken(String fieldUnit) {
    return byField.getOrDefault(fieldUnit, Map.of()).keySet();
  }

  /**
   * How to come from the typed unit to the field's. Exact spelling first, then any case, since the
   * case of "m" and "M" matters and that of "Mm/S" does not.
   */
  Optional<Conversion> conversion(String fieldUnit, String typedUnit) {
    String typed = typedUnit.replace('\u2126', 'Ω').replace('\u03bc', 'µ');
    if (typed.isEmpty() || typed.equals(fieldUnit)) {
      return Optional.of(Conversion.SAME);
    }
    Map<String, Conversion> known = byField.getOrDefault(fieldUnit, Map.of());
    Conversion exact = known.get(typed);
    if (exact != null) {
      return Optional.of(exact);
    }
    var alike = known.entrySet().stream().filter(e -> e.getKey().equalsIgnoreCase(typed)).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0).getValue()) : Optional.empty();
  }
}
