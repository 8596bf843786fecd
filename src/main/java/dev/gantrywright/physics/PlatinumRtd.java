package dev.gantrywright.physics;

/**
 * A platinum resistance sensor: R = R0 (1 + A t + B t² + C (t - 100) t³), C below 0 °C only.
 *
 * <p>Source: IEC 60751 (Callendar–Van Dusen coefficients, -200 to 850 °C). Temperatures in °C,
 * resistances in Ω.
 */
public final class PlatinumRtd {
  /** IEC 60751 coefficient A in 1/°C. */
  public static final double A = 3.9083e-3;

  /** IEC 60751 coefficient B in 1/°C². */
  public static final double B = -5.775e-7;

  /** IEC 60751 coefficient C in 1/°C⁴, for temperatures below zero. */
  public static final double C = -4.183e-12;

  private static final double LEAST_CELSIUS = -200;
  private static final double MOST_CELSIUS = 850;

  private PlatinumRtd() {}

  /**
   * Resistance at a temperature.
   *
   * @throws OutOfDomain outside -200 to 850 °C
   */
  public static double ohms(double r0Ohms, double celsius) {
    OutOfDomain.positive("R0 in ohm", r0Ohms);
    OutOfDomain.between("the temperature in °C", celsius, LEAST_CELSIUS, MOST_CELSIUS);
    return r0Ohms * ratio(celsius);
  }

  /**
   * Temperature of a resistance: closed form from R0 up, Newton's method below.
   *
   * @throws OutOfDomain outside what -200 to 850 °C give
   */
  public static double celsius(double r0Ohms, double ohms) {
    OutOfDomain.positive("R0 in ohm", r0Ohms);
    OutOfDomain.positive("the resistance in ohm", ohms);
    double ratio = ohms / r0Ohms;
    // The last digit of a printed table value may lie beyond the ends; a hundredth more is let in.
    double slack = 1e-4;
    if (ratio < ratio(LEAST_CELSIUS) - slack || ratio > ratio(MOST_CELSIUS) + slack) {
      throw new OutOfDomain(
          "the resistance lies outside -200 to 850 °C of a sensor with R0 of " + r0Ohms + " ohm");
    }
    double closed = (-A + Math.sqrt(A * A - 4 * B * (1 - ratio))) / (2 * B);
    if (ratio >= 1) {
      return closed;
    }
    double t = closed;
    for (int i = 0; i < 8; i++) {
      t -= (ratio(t) - ratio) / slope(t);
    }
    return t;
  }

  private static double ratio(double t) {
    double cubic = t < 0 ? C * (t - 100) * t * t * t : 0;
    return 1 + A * t + B * t * t + cubic;
  }

  private static double slope(double t) {
    double cubic = t < 0 ? C * (4 * t - 300) * t * t : 0;
    return A + 2 * B * t + cubic;
  }

  /**
   * Tolerance of a class in °C: c0 + c1 |t| (A 0.15 and 0.002, B 0.30 and 0.005, AA 0.1 and
   * 0.0017).
   */
  public static double toleranceCelsius(double c0, double c1, double celsius) {
    return c0 + c1 * Math.abs(celsius);
  }
}
