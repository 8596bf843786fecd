package dev.gantrywright.physics;

/**
 * How fast the current can be turned round in a coil. Ignores back-EMF and resistance, so each
 * figure is an upper bound only.
 *
 * <p>Source: V = L dI/dt over one full step, from -I to +I; published by stepper calculators.
 */
public final class StepperSpeed {
  private StepperSpeed() {}

  /** Least time of a full step in s: 2 L I / V. */
  public static double fullStepSeconds(double supplyVolts, double henry, double amps) {
    OutOfDomain.positive("the supply in V", supplyVolts);
    OutOfDomain.positive("the inductance in H", henry);
    OutOfDomain.positive("the current in A", amps);
    return 2 * henry * amps / supplyVolts;
  }

  /** Highest speed in revolutions a second: V / (2 L I steps). */
  public static double revolutionsPerSecond(
      double supplyVolts, double henry, double amps, double fullSteps) {
    OutOfDomain.positive("full steps", fullSteps);
    return 1 / (fullStepSeconds(supplyVolts, henry, amps) * fullSteps);
  }

  /** The supply in V that a rate of full steps a second asks for: 2 L I f. */
  public static double supplyVolts(double henry, double amps, double fullStepsPerSecond) {
    OutOfDomain.positive("the inductance in H", henry);
    OutOfDomain.positive("the current in A", amps);
    return 2 * henry * amps * OutOfDomain.positive("full steps per second", fullStepsPerSecond);
  }

  /** Time constant of a coil in s: L / R. */
  public static double timeConstantSeconds(double henry, double ohms) {
    OutOfDomain.positive("the inductance in H", henry);
    return henry / OutOfDomain.positive("the resistance in ohm", ohms);
  }
}
