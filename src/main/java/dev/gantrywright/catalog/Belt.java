package dev.gantrywright.catalog;

/**
 * A synchronous belt.
 *
 * @param designation name of the profile and pitch
 * @param pitchMm distance between teeth in mm
 * @param standard the standard that lists it, or "none"
 * @param source where this stands
 */
public record Belt(String designation, double pitchMm, String standard, String source) {
  static Belt of(Row row) {
    return new Belt(
        row.text("designation"), row.number("pitchMm"), row.text("standard"), row.text("source"));
  }
}
