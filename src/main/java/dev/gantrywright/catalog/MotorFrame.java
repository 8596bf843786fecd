package dev.gantrywright.catalog;

/**
 * A mounting frame of stepper motors. It says nothing about torque, current or step angle.
 *
 * @param designation such as NEMA 17
 * @param boltSpacingMm distance between neighbouring bolt holes in mm
 * @param source where this stands
 */
public record MotorFrame(String designation, double boltSpacingMm, String source) {
  static MotorFrame of(Row row) {
    return new MotorFrame(row.text("designation"), row.number("boltSpacingMm"), row.text("source"));
  }
}
