package dev.gantrywright.physics;

/** A resistive heater: P = V²/R. Source: definition. Volts, amps, ohms, watts. */
public final class HeaterPower {
  private HeaterPower() {}

  public static double ohms(double volts, double watts) {
    OutOfDomain.positive("the voltage in V", volts);
    return volts * volts / OutOfDomain.positive("the power in W", watts);
  }

  public static double amps(double volts, double watts) {
    OutOfDomain.notNegative("the power in W", watts);
    return watts / OutOfDomain.positive("the voltage in V", volts);
  }

  public static double watts(double volts, double ohms) {
    OutOfDomain.notNegative("the voltage in V", volts);
    return volts * volts / OutOfDomain.positive("the resistance in ohm", ohms);
  }

  /** How many times its rated power a heater takes at another voltage: 4 for 12 V parts on 24 V. */
  public static double powerRatio(double appliedVolts, double ratedVolts) {
    OutOfDomain.notNegative("the applied voltage in V", appliedVolts);
    double ratio = appliedVolts / OutOfDomain.positive("the rated voltage in V", ratedVolts);
    return ratio * ratio;
  }
}
