package dev.gantrywright.physics;

/**
 * Three vertical columns with arms of equal length.
 *
 * <p>Source: geometry: h = z + sqrt(L² - (R cos a - x)² - (R sin a - y)²). Lengths in mm.
 */
public final class DeltaDrive {
  private DeltaDrive() {}

  /**
   * Height of the carriage on one column.
   *
   * @param radiusMm effective radius: that of the columns less both offsets
   * @param armMm length of the arms
   * @param columnDegrees direction of the column
   * @throws OutOfDomain if the arm does not reach the point
   */
  public static double carriageMm(
      double radiusMm, double armMm, double columnDegrees, double x, double y, double z) {
    double angle = Math.toRadians(columnDegrees);
    double dx = radiusMm * Math.cos(angle) - x;
    double dy = radiusMm * Math.sin(angle) - y;
    double square = armMm * armMm - dx * dx - dy * dy;
    if (square < 0) {
      throw new OutOfDomain("the arm of " + armMm + " mm does not reach (" + x + ", " + y + ")");
    }
    return z + Math.sqrt(square);
  }
}
