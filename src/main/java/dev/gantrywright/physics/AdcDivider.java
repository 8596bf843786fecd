package dev.gantrywright.physics;

/**
 * A sensor to ground under a pull-up resistor, read by an analogue input with the same reference.
 *
 * <p>Source: definition of a divider; count = 2^bits R / (R + pull-up). Resistances in Ω.
 */
public final class AdcDivider {
  private AdcDivider() {}

  /** The reading of a sensor resistance in counts, not rounded. */
  public static double counts(double sensorOhms, double pullUpOhms, int bits) {
    OutOfDomain.notNegative("the sensor's resistance in ohm", sensorOhms);
    OutOfDomain.positive("the pull-up in ohm", pullUpOhms);
    return full(bits) * sensorOhms / (sensorOhms + pullUpOhms);
  }

  /** The sensor resistance in Ω of a reading. */
  public static double sensorOhms(double counts, double pullUpOhms, int bits) {
    OutOfDomain.positive("the pull-up in ohm", pullUpOhms);
    if (!(counts >= 0 && counts < full(bits))) {
      throw new OutOfDomain("the reading must lie from 0 to below " + (long) full(bits));
    }
    return pullUpOhms * counts / (full(bits) - counts);
  }

  /** The reading of a voltage in counts, not rounded. */
  public static double countsOfVolts(double volts, double referenceVolts, int bits) {
    OutOfDomain.positive("the reference in V", referenceVolts);
    return full(bits) * OutOfDomain.notNegative("the voltage in V", volts) / referenceVolts;
  }

  /**
   * How many degrees one count means for a B-value thermistor at a temperature.
   *
   * @return kelvin per count, above zero; large where the divider no longer resolves the sensor
   */
  public static double kelvinPerCount(
      double r25Ohms, double betaKelvin, double celsius, double pullUpOhms, int bits) {
    double ohms = Ntc.ohms(r25Ohms, betaKelvin, celsius);
    OutOfDomain.positive("the pull-up in ohm", pullUpOhms);
    double sum = ohms + pullUpOhms;
    double countsPerOhm = full(bits) * pullUpOhms / (sum * sum);
    double kelvin = Kelvin.of(celsius);
    double ohmsPerKelvin = ohms * betaKelvin / (kelvin * kelvin);
    return 1 / (countsPerOhm * ohmsPerKelvin);
  }

  private static double full(int bits) {
    OutOfDomain.between("the resolution in bits", bits, 1, 32);
    return Math.pow(2, bits);
  }
}
