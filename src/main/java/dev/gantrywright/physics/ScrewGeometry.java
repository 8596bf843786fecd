package dev.gantrywright.physics;

/**
 * Trapezoidal screws: lead, starts, and the diameters of the thread.
 *
 * <p>Source: ISO 2901 and ISO 2904 relations (d2 = d - P/2, D1 = d - P, d3 = d - P - 2 ac, D4 = d +
 * 2 ac). Lengths in mm.
 */
public final class ScrewGeometry {
  private ScrewGeometry() {}

  /** Travel of one turn: pitch times starts. */
  public static double leadMm(double pitchMm, int starts) {
    OutOfDomain.positive("the pitch in mm", pitchMm);
    OutOfDomain.positive("the number of starts", (long) starts);
    return pitchMm * starts;
  }

  /** How many starts a lead means at a pitch. */
  public static double starts(double leadMm, double pitchMm) {
    OutOfDomain.positive("the lead in mm", leadMm);
    return leadMm / OutOfDomain.positive("the pitch in mm", pitchMm);
  }

  /** Crest clearance ac: 0.15 mm at pitch 1.5, 0.25 mm from 2 to 5, 0.5 mm from 6 to 12. */
  public static double clearanceMm(double pitchMm) {
    OutOfDomain.between("the pitch in mm", pitchMm, 1.5, 12);
    return pitchMm < 2 ? 0.15 : pitchMm <= 5 ? 0.25 : 0.5;
  }

  public static double pitchDiameterMm(double diameterMm, double pitchMm) {
    return diameterMm - pitchMm / 2;
  }

  public static double nutMinorDiameterMm(double diameterMm, double pitchMm) {
    return diameterMm - pitchMm;
  }

  public static double screwMinorDiameterMm(double diameterMm, double pitchMm, double clearanceMm) {
    return diameterMm - pitchMm - 2 * clearanceMm;
  }

  public static double nutMajorDiameterMm(double diameterMm, double clearanceMm) {
    return diameterMm + 2 * clearanceMm;
  }
}
