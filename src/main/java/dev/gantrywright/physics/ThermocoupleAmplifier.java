package dev.gantrywright.physics;

/**
 * A thermocouple amplifier of 5 mV/°C with a shifted zero.
 *
 * <p>Source: AD8494/8495 data sheet: V = 5 mV/°C T + VREF.
 */
public final class ThermocoupleAmplifier {
  private static final double VOLTS_PER_CELSIUS = 0.005;

  private ThermocoupleAmplifier() {}

  public static double volts(double celsius, double referenceVolts) {
    return VOLTS_PER_CELSIUS * celsius + referenceVolts;
  }

  public static double celsius(double volts, double referenceVolts) {
    return (volts - referenceVolts) / VOLTS_PER_CELSIUS;
  }
}
