package dev.gantrywright.physics;

/**
 * A thermistor material by its maker's polynomials: ln(R/R25) = A + B/T + C/T² + D/T³, and 1/T = a
 * + b ln + c ln² + d ln³.
 *
 * <p>Source: Amphenol Thermometrics curve guide Rev C (November 2014).
 *
 * @param forward A, B, C, D
 * @param inverse a, b, c, d
 * @param leastCelsius lower end of the fit
 * @param mostCelsius upper end of the fit
 */
public record MaterialCurve(Cubic forward, Cubic inverse, double leastCelsius, double mostCelsius) {

  /** Coefficients of a cubic, constant first. */
  public record Cubic(double c0, double c1, double c2, double c3) {
    double at(double x) {
      return c0 + x * (c1 + x * (c2 + x * c3));
    }
  }

  /** Material type 1, 10 kΩ class, -40 to 155 °C. */
  public static final MaterialCurve TYPE_1 =
      new MaterialCurve(
          new Cubic(-14.195756, 4407.4785, -5165.8730, -14017368),
          new Cubic(3.3539438e-3, 2.5646095e-4, 2.5158166e-6, 1.0503069e-7),
          -40,
          155);

  /** Resistance at a temperature in °C over that at 25 °C. */
  public double ratio(double celsius) {
    OutOfDomain.between("the temperature in °C", celsius, leastCelsius, mostCelsius);
    return Math.exp(forward.at(1 / Kelvin.of(celsius)));
  }

  /** Temperature in °C of a resistance over that at 25 °C. */
  public double celsius(double ratio) {
    return Kelvin.celsiusOfReciprocal(
        inverse.at(Math.log(OutOfDomain.positive("the resistance ratio", ratio))));
  }
}
