package dev.gantrywright.physics;

/**
 * Settings of a controller in the form Kc (1 + 1/(Ti s) + Td s).
 *
 * @param kc gain
 * @param tiSeconds integral time, infinite for none
 * @param tdSeconds derivative time, 0 for none
 */
public record Gains(double kc, double tiSeconds, double tdSeconds) {

  /** The integral gain Kc / Ti in 1/s. */
  public double ki() {
    return kc / tiSeconds;
  }

  /** The derivative gain Kc Td in s. */
  public double kd() {
    return kc * tdSeconds;
  }

  static Gains proportional(double kc) {
    return new Gains(kc, Double.POSITIVE_INFINITY, 0);
  }
}
