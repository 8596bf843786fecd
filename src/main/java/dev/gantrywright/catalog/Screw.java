package dev.gantrywright.catalog;

/**
 * A screw thread. One turn moves the nut by the lead: pitch times the number of starts.
 *
 * @param designation such as Tr8x1.5 or M8
 * @param diameterMm nominal diameter in mm
 * @param pitchMm pitch in mm
 * @param standard the standard that lists it, or "none"
 * @param source where this stands
 */
public record Screw(
    String designation, double diameterMm, double pitchMm, String standard, String source) {
  static Screw of(Row row) {
    return new Screw(
        row.text("designation"),
        row.number("diameterMm"),
        row.number("pitchMm"),
        row.text("standard"),
        row.text("source"));
  }
}
