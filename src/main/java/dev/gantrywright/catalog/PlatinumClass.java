package dev.gantrywright.catalog;

/**
 * A tolerance class of platinum sensors: base + slope x |t|, in °C.
 *
 * @param name AA, A, B or C
 * @param baseCelsius tolerance at 0 °C
 * @param perDegree what each degree adds
 * @param source where this stands
 */
public record PlatinumClass(String name, double baseCelsius, double perDegree, String source) {
  static PlatinumClass of(Row row) {
    return new PlatinumClass(
        row.text("name"), row.number("baseCelsius"), row.number("perDegree"), row.text("source"));
  }
}
