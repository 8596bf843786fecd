package dev.gantrywright.physics;

/**
 * An NTC thermistor by its B value: R = R25 exp(B (1/T - 1/298.15 K)).
 *
 * <p>Source: IEC 60539-1, definition of the B value. Good near the two temperatures at which B was
 * measured; use a table or {@link SteinhartHart} over a wide range. Temperatures in °C.
 */
public final class Ntc {
  private static final double REFERENCE_CELSIUS = 25;

  private Ntc() {}

  /** Resistance in Ω at a temperature. */
  public static double ohms(double r25Ohms, double betaKelvin, double celsius) {
    OutOfDomain.positive("R25 in ohm", r25Ohms);
    return r25Ohms * ratio(betaKelvin, celsius, REFERENCE_CELSIUS);
  }

  /** Resistance at a temperature over that at the reference temperature. */
  public static double ratio(double betaKelvin, double celsius, double referenceCelsius) {
    OutOfDomain.positive("B in K", betaKelvin);
    return Math.exp(betaKelvin * (1 / Kelvin.of(celsius) - 1 / Kelvin.of(referenceCelsius)));
  }

  /** Temperature of a resistance in Ω. */
  public static double celsius(double r25Ohms, double betaKelvin, double ohms) {
    OutOfDomain.positive("R25 in ohm", r25Ohms);
    OutOfDomain.positive("the resistance in ohm", ohms);
    return celsiusOfRatio(betaKelvin, ohms / r25Ohms, REFERENCE_CELSIUS);
  }

  /** Temperature of a resistance ratio. */
  public static double celsiusOfRatio(double betaKelvin, double ratio, double referenceCelsius) {
    OutOfDomain.positive("B in K", betaKelvin);
    OutOfDomain.positive("the resistance ratio", ratio);
    return Kelvin.celsiusOfReciprocal(
        1 / Kelvin.of(referenceCelsius) + Math.log(ratio) / betaKelvin);
  }

  /** The B value in K between two points of a table. */
  public static double beta(double r1, double celsius1, double r2, double celsius2) {
    OutOfDomain.positive("the first resistance", r1);
    OutOfDomain.positive("the second resistance", r2);
    double span = 1 / Kelvin.of(celsius1) - 1 / Kelvin.of(celsius2);
    if (span == 0) {
      throw new OutOfDomain("the two temperatures must differ");
    }
    return Math.log(r1 / r2) / span;
  }

  /**
   * Resistance near a table point by its temperature coefficient, as thermistor makers interpolate:
   * R = Rx exp(α/100 Tx² (1/T - 1/Tx)).
   *
   * @param pointOhms resistance, or ratio, at the table point
   * @param percentPerKelvin α of the table point, a positive number
   * @param pointCelsius temperature of the table point
   * @param celsius temperature asked for
   */
  public static double nearPoint(
      double pointOhms, double percentPerKelvin, double pointCelsius, double celsius) {
    OutOfDomain.positive("the resistance of the table point", pointOhms);
    double tx = Kelvin.of(pointCelsius);
    return pointOhms
        * Math.exp(percentPerKelvin / 100 * tx * tx * (1 / Kelvin.of(celsius) - 1 / tx));
  }
}
