package dev.gantrywright.catalog;

/**
 * What decides how warm a driver IC runs.
 *
 * @param onOhms on resistance of each output transistor at 25 °C, Ω
 * @param junctionToAirKelvinPerWatt thermal resistance on its board without a heat sink, K/W
 * @param junctionMostCelsius highest junction temperature, °C
 * @param source where these facts stand
 */
public record DriverHeat(
    double onOhms, double junctionToAirKelvinPerWatt, double junctionMostCelsius, String source) {
  static DriverHeat of(Row row) {
    return new DriverHeat(
        row.number("onOhms"),
        row.number("junctionToAirKelvinPerWatt"),
        row.number("junctionMostCelsius"),
        row.text("source"));
  }
}
