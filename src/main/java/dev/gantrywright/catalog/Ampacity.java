package dev.gantrywright.catalog;

/**
 * What a copper conductor carries. Local codes and licensed practice decide; this is for a first
 * look.
 *
 * @param areaMm2 cross-section in mm²
 * @param method installation method: B2 or C of buildings, "machine B1" to "machine E"
 * @param ambientCelsius temperature around it in °C
 * @param amps current in A
 * @param source where this stands
 */
public record Ampacity(
    double areaMm2, String method, double ambientCelsius, double amps, String source) {
  static Ampacity of(Row row) {
    return new Ampacity(
        row.number("areaMm2"),
        row.text("method"),
        row.number("ambientCelsius"),
        row.number("amps"),
        row.text("source"));
  }
}
