package dev.gantrywright.physics;

/** Logic inputs: thresholds, margins, dividers, pulls, filters. Source: definitions. */
public final class InputLevel {
  private InputLevel() {}

  /** Threshold in V that a data sheet gives as a share of the supply. */
  public static double thresholdVolts(double share, double supplyVolts) {
    OutOfDomain.between("the share of the supply", share, 0, 1);
    return share * OutOfDomain.positive("the supply in V", supplyVolts);
  }

  /** How far a high output lies above the input's threshold, below zero where it does not. */
  public static double highMarginVolts(double outputVolts, double thresholdVolts) {
    return outputVolts - thresholdVolts;
  }

  /** Output in V of a divider. */
  public static double dividedVolts(double supplyVolts, double topOhms, double bottomOhms) {
    OutOfDomain.notNegative("the top resistor in ohm", topOhms);
    OutOfDomain.positive("the bottom resistor in ohm", bottomOhms);
    return supplyVolts * bottomOhms / (topOhms + bottomOhms);
  }

  /** Current in A through a pull resistor that is shorted to the other rail. */
  public static double pullAmps(double volts, double ohms) {
    return volts / OutOfDomain.positive("the pull resistor in ohm", ohms);
  }

  /** Time constant in s of a resistor and a capacitor. */
  public static double timeConstantSeconds(double ohms, double farads) {
    OutOfDomain.notNegative("the capacitance in F", farads);
    return OutOfDomain.notNegative("the resistance in ohm", ohms) * farads;
  }

  /** Equal samples needed in a row so that a bounce of this length is never seen. */
  public static int debounceSamples(double bounceSeconds, double sampleSeconds) {
    OutOfDomain.notNegative("the bounce in s", bounceSeconds);
    OutOfDomain.positive("the sample time in s", sampleSeconds);
    return (int) Math.ceil(bounceSeconds / sampleSeconds - 1e-9);
  }
}
