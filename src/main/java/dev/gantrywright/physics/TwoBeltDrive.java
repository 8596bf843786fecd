package dev.gantrywright.physics;

/**
 * The drive of two crossed belts that move two axes together (CoreXY): A = x + y, B = x - y.
 *
 * <p>Source: kinematics, common practice. Lengths in mm. Its steps/mm are those of a plain belt
 * axis.
 */
public final class TwoBeltDrive {
  private TwoBeltDrive() {}

  public static double motorA(double x, double y) {
    return x + y;
  }

  public static double motorB(double x, double y) {
    return x - y;
  }

  public static double x(double motorA, double motorB) {
    return (motorA + motorB) / 2;
  }

  public static double y(double motorA, double motorB) {
    return (motorA - motorB) / 2;
  }
}
