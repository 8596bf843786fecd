package dev.gantrywright.physics;

import java.util.List;

/**
 * A process seen as first order plus dead time, and the tuning rules that start from it.
 *
 * <p>Source: Ziegler and Nichols 1942 (open loop), Cohen and Coon 1953, Skogestad 2003 (SIMC); the
 * two-point fit after Smith 1972 (memory).
 *
 * @param gain change of the reading over change of the output, at rest
 * @param tauSeconds time constant
 * @param deadSeconds dead time
 */
public record Fopdt(double gain, double tauSeconds, double deadSeconds) {

  private static final double SHARE_EARLY = 0.283;
  private static final double SHARE_LATE = 0.632;

  /** One reading of a step response: seconds since the output stepped, and the reading. */
  public record Reading(double seconds, double value) {}

  public Fopdt {
    OutOfDomain.positive("the gain", gain);
    OutOfDomain.positive("the time constant in s", tauSeconds);
    OutOfDomain.positive("the dead time in s", deadSeconds);
  }

  /**
   * From the times at which a step response has gone 28.3 % and 63.2 % of its way: τ = 1.5 (t63 -
   * t28), dead time = t63 - τ.
   *
   * @throws OutOfDomain if the times leave no dead time
   */
  public static Fopdt ofTwoPoints(double gain, double seconds28, double seconds63) {
    double tau = 1.5 * (seconds63 - seconds28);
    return new Fopdt(gain, tau, seconds63 - tau);
  }

  /**
   * From a step response that starts and ends at rest.
   *
   * @param readings in order of time; the first is the start value, the last the end value
   * @param outputStep how far the output stepped, in its own unit
   * @throws OutOfDomain if the readings do not rise by a step's shape
   */
  public static Fopdt fit(List<Reading> readings, double outputStep) {
    OutOfDomain.positive("the output step", outputStep);
    if (readings.size() < 4) {
      throw new OutOfDomain("a step response needs four readings at least");
    }
    double start = readings.get(0).value();
    double rise = readings.get(readings.size() - 1).value() - start;
    OutOfDomain.positive("the rise of the reading", rise);
    return ofTwoPoints(
        rise / outputStep,
        crossing(readings, start + SHARE_EARLY * rise),
        crossing(readings, start + SHARE_LATE * rise));
  }

  private static double crossing(List<Reading> readings, double value) {
    for (int i = 1; i < readings.size(); i++) {
      Reading before = readings.get(i - 1);
      Reading after = readings.get(i);
      if (before.value() < value && after.value() >= value) {
        double share = (value - before.value()) / (after.value() - before.value());
        return before.seconds() + share * (after.seconds() - before.seconds());
      }
    }
    throw new OutOfDomain("the reading never passes " + value);
  }

  public Gains zieglerNicholsPi() {
    return new Gains(0.9 * steepness(), deadSeconds / 0.3, 0);
  }

  public Gains zieglerNicholsPid() {
    return new Gains(1.2 * steepness(), 2 * deadSeconds, 0.5 * deadSeconds);
  }

  public Gains cohenCoonPi() {
    double r = deadSeconds / tauSeconds;
    double ti = deadSeconds * (30 + 3 * r) / (9 + 20 * r);
    return new Gains(steepness() * (0.9 + r / 12), ti, 0);
  }

  public Gains cohenCoonPid() {
    double r = deadSeconds / tauSeconds;
    double ti = deadSeconds * (32 + 6 * r) / (13 + 8 * r);
    return new Gains(steepness() * (4.0 / 3 + r / 4), ti, 4 * deadSeconds / (11 + 2 * r));
  }

  /** PI after SIMC with a wanted closed-loop time constant; the dead time is the usual choice. */
  public Gains simcPi(double closedLoopSeconds) {
    OutOfDomain.notNegative("the closed-loop time constant in s", closedLoopSeconds);
    double sum = closedLoopSeconds + deadSeconds;
    return new Gains(tauSeconds / (gain * sum), Math.min(tauSeconds, 4 * sum), 0);
  }

  private double steepness() {
    return tauSeconds / (gain * deadSeconds);
  }

  /** Where a proportional loop around this process just swings: dead ω + atan(τ ω) = π. */
  public UltimatePoint ultimate() {
    double low = 0;
    double high = Math.PI / deadSeconds;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      if (deadSeconds * middle + Math.atan(tauSeconds * middle) < Math.PI) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double omega = (low + high) / 2;
    return new UltimatePoint(Math.hypot(1, tauSeconds * omega) / gain, 2 * Math.PI / omega);
  }
}
