package dev.gantrywright.physics;

/**
 * Copper wire: gauge, voltage drop, derating.
 *
 * <p>Source: ASTM B258 (d = 0.127 mm x 92^((36-n)/39)); resistivity of annealed copper at 20 °C
 * 1.7241e-8 Ωm (IEC 60028).
 */
public final class Wire {
  /** Resistance of annealed copper at 20 °C in Ω mm²/m, IEC 60028. */
  public static final double COPPER_OHM_MM2_PER_M = 0.017241;

  private Wire() {}

  /** Diameter in mm of an American wire gauge, -3 (0000) to 56. */
  public static double gaugeDiameterMm(int gauge) {
    OutOfDomain.between("the wire gauge", gauge, -3, 56);
    return 0.127 * Math.pow(92, (36 - gauge) / 39.0);
  }

  /** Cross-section in mm² of an American wire gauge. */
  public static double gaugeAreaMm2(int gauge) {
    double diameter = gaugeDiameterMm(gauge);
    return Math.PI / 4 * diameter * diameter;
  }

  /** Voltage drop in V over both ways of a copper line at 20 °C, its length in m one way. */
  public static double dropVolts(double amps, double lengthMetres, double areaMm2) {
    OutOfDomain.notNegative("the current in A", amps);
    OutOfDomain.notNegative("the length in m", lengthMetres);
    OutOfDomain.positive("the cross-section in mm²", areaMm2);
    return 2 * amps * lengthMetres * COPPER_OHM_MM2_PER_M / areaMm2;
  }

  /** The current in A that a rating leaves at a derating factor of 0 to 1. */
  public static double deratedAmps(double ratedAmps, double factor) {
    OutOfDomain.notNegative("the rating in A", ratedAmps);
    return ratedAmps * OutOfDomain.between("the derating factor", factor, 0, 1);
  }
}
