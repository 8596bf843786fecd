package dev.gantrywright.physics;

/**
 * A move that speeds up, cruises and slows down at one acceleration, from rest to rest.
 *
 * <p>Source: v² = 2 a s. Lengths in mm, speeds in mm/s, accelerations in mm/s².
 */
public final class Trapezoid {
  private Trapezoid() {}

  /** Distance needed to reach a speed from rest. */
  public static double distanceToReachMm(double speed, double acceleration) {
    OutOfDomain.notNegative("the speed in mm/s", speed);
    OutOfDomain.positive("the acceleration in mm/s²", acceleration);
    return speed * speed / (2 * acceleration);
  }

  /** Highest speed that a move of this length reaches before it must slow down. */
  public static double peakSpeed(double distanceMm, double speed, double acceleration) {
    OutOfDomain.notNegative("the distance in mm", distanceMm);
    OutOfDomain.positive("the acceleration in mm/s²", acceleration);
    OutOfDomain.notNegative("the speed in mm/s", speed);
    return Math.min(speed, Math.sqrt(distanceMm * acceleration));
  }

  /** Time of the whole move in s. */
  public static double seconds(double distanceMm, double speed, double acceleration) {
    OutOfDomain.positive("the speed in mm/s", speed);
    double peak = peakSpeed(distanceMm, speed, acceleration);
    double ramps = 2 * distanceToReachMm(peak, acceleration);
    return 2 * peak / acceleration + (distanceMm - ramps) / speed;
  }

  /** Whether a move of this length reaches the speed at all. */
  public static boolean reaches(double distanceMm, double speed, double acceleration) {
    OutOfDomain.notNegative("the distance in mm", distanceMm);
    return 2 * distanceToReachMm(speed, acceleration) <= distanceMm;
  }
}
