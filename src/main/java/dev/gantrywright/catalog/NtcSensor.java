package dev.gantrywright.catalog;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A thermistor that can be bought.
 *
 * @param name maker's name, or resistance and B value
 * @param r25Ohms resistance at 25 °C in ohm
 * @param betaKelvin B value in K, where the maker states one
 * @param betaFromCelsius lower temperature for which it holds
 * @param betaToCelsius upper temperature for which it holds
 * @param curve table in the catalogue, if there is one
 * @param mostCelsius highest temperature it bears
 * @param source where this stands
 */
public record NtcSensor(
    String name,
    double r25Ohms,
    OptionalDouble betaKelvin,
    double betaFromCelsius,
    double betaToCelsius,
    Optional<String> curve,
    double mostCelsius,
    String source) {
  static NtcSensor of(Row row) {
    return new NtcSensor(
        row.text("name"),
        row.number("r25Ohms"),
        CurrentRule.optional(row, "betaKelvin"),
        row.number("betaFromCelsius", 25),
        row.number("betaToCelsius", 25),
        row.has("curve") ? Optional.of(row.text("curve")) : Optional.empty(),
        row.number("mostCelsius"),
        row.text("source"));
  }
}
