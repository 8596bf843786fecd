package dev.gantrywright.catalog;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One temperature sensor.
 *
 * @param id as profiles name it, such as {@code ntc-100k-3950}
 * @param name what it is, in words
 * @param kind {@link Kind#NTC} by R25 and B, {@link Kind#PLATINUM} by R0
 * @param ohms R25 of an NTC, R0 of a platinum sensor, Ω
 * @param betaKelvin B of an NTC, K; absent for platinum
 * @param curve number of its maker's table, see {@link Catalog#ntcCurve}, where the catalogue has
 *     it
 * @param leastCelsius lowest temperature that it is made for
 * @param mostCelsius highest temperature that it is made for
 * @param source where this stands
 */
public record Sensor(
    String id,
    String name,
    Kind kind,
    double ohms,
    OptionalDouble betaKelvin,
    Optional<String> curve,
    double leastCelsius,
    double mostCelsius,
    String source) {
  /** How the resistance depends on temperature. */
  public enum Kind {
    NTC,
    PLATINUM
  }

  static Sensor of(Row row) {
    Kind kind =
        switch (row.text("kind")) {
          case "ntc" -> Kind.NTC;
          case "platinum" -> Kind.PLATINUM;
          default -> throw new IllegalStateException(row.place() + ": unknown kind");
        };
    return new Sensor(
        row.text("id"),
        row.text("name"),
        kind,
        row.number("ohms"),
        CurrentRule.optional(row, "betaKelvin"),
        row.has("curve") ? Optional.of(row.text("curve")) : Optional.empty(),
        row.number("leastCelsius"),
        row.number("mostCelsius"),
        row.text("source"));
  }
}
