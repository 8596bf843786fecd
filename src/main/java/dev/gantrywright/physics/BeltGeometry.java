package dev.gantrywright.physics;

/** Synchronous belts and pulleys. Lengths in mm. Source: definition. */
public final class BeltGeometry {
  /** Millimetres of one inch, by definition. */
  public static final double MM_PER_INCH = 25.4;

  private BeltGeometry() {}

  /** Diameter of the pulley on which the belt's cord runs. */
  public static double pitchDiameterMm(int teeth, double pitchMm) {
    OutOfDomain.positive("the number of teeth", (long) teeth);
    return teeth * OutOfDomain.positive("the belt pitch in mm", pitchMm) / Math.PI;
  }

  public static double millimetres(double inches) {
    return inches * MM_PER_INCH;
  }
}
