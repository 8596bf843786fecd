package dev.gantrywright.physics;

/**
 * The Steinhart–Hart equation: 1/T = a + b ln R + c (ln R)³, T in K, R in Ω.
 *
 * <p>Source: Steinhart and Hart 1968, Deep-Sea Research 15.
 *
 * @param a constant term in 1/K
 * @param b factor of ln R in 1/K
 * @param c factor of (ln R)³ in 1/K; below zero only in a fit over resistance ratios, which then
 *     holds near them
 */
public record SteinhartHart(double a, double b, double c) {

  /**
   * @throws OutOfDomain unless b is above zero, which is what makes the resistance fall with
   *     temperature
   */
  public SteinhartHart {
    OutOfDomain.finite("a", a);
    OutOfDomain.positive("b", b);
    OutOfDomain.finite("c", c);
  }

  /** The curve through three points of resistance (Ω or ratio) and temperature (°C). */
  public static SteinhartHart through(
      double r1, double t1, double r2, double t2, double r3, double t3) {
    double l1 = log(r1);
    double l2 = log(r2);
    double l3 = log(r3);
    double y1 = 1 / Kelvin.of(t1);
    double y2 = 1 / Kelvin.of(t2);
    double y3 = 1 / Kelvin.of(t3);
    if (l1 == l2 || l1 == l3 || l2 == l3) {
      throw new OutOfDomain("the three resistances must differ");
    }
    double g2 = (y2 - y1) / (l2 - l1);
    double g3 = (y3 - y1) / (l3 - l1);
    double sum = l1 + l2 + l3;
    if (sum == 0) {
      throw new OutOfDomain("the three points do not fix a curve");
    }
    double c = (g3 - g2) / (l3 - l2) / sum;
    double b = g2 - c * (l1 * l1 + l1 * l2 + l2 * l2);
    double a = y1 - (b + l1 * l1 * c) * l1;
    return new SteinhartHart(a, b, c);
  }

  /** Temperature in °C of a resistance. */
  public double celsius(double ohms) {
    double log = log(ohms);
    return Kelvin.celsiusOfReciprocal(a + b * log + c * log * log * log);
  }

  /**
   * Resistance at a temperature in °C: the real root of the cubic.
   *
   * @throws OutOfDomain if c is below zero and the temperature lies beyond the curve's turning
   *     point
   */
  public double ohms(double celsius) {
    double y = 1 / Kelvin.of(celsius) - a;
    if (c == 0) {
      return Math.exp(y / b);
    }
    if (c < 0) {
      return Math.exp(rootBeforeTurning(y));
    }
    double half = y / (2 * c);
    double third = b / (3 * c);
    double root = Math.sqrt(third * third * third + half * half);
    return Math.exp(Math.cbrt(half + root) + Math.cbrt(half - root));
  }

  private double rootBeforeTurning(double y) {
    double turning = Math.sqrt(-b / (3 * c));
    if (Math.abs(y) > 2 * b * turning / 3) {
      throw new OutOfDomain("the temperature lies beyond the curve's turning point");
    }
    double low = -turning;
    double high = turning;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (b * middle + c * middle * middle * middle < y) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double log(double ohms) {
    return Math.log(OutOfDomain.positive("the resistance in ohm", ohms));
  }
}
