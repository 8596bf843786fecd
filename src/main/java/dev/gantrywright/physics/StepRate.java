package dev.gantrywright.physics;

/** How many step pulses a second a speed needs. Source: definition. */
public final class StepRate {
  private StepRate() {}

  /** Step pulses a second at a speed in mm/s. */
  public static double hertz(double stepsPerMm, double speedMmPerSecond) {
    OutOfDomain.positive("steps/mm", stepsPerMm);
    return stepsPerMm * OutOfDomain.notNegative("the speed in mm/s", speedMmPerSecond);
  }

  /** The speed in mm/s that a step rate allows. */
  public static double speedMmPerSecond(double hertz, double stepsPerMm) {
    OutOfDomain.notNegative("the step rate in Hz", hertz);
    return hertz / OutOfDomain.positive("steps/mm", stepsPerMm);
  }

  /** Step pulses a second of a motor at revolutions a minute. */
  public static double ofRpm(double rpm, double fullSteps, double microsteps) {
    OutOfDomain.positive("full steps", fullSteps);
    OutOfDomain.positive("microsteps", microsteps);
    return OutOfDomain.notNegative("the speed in rpm", rpm) * fullSteps * microsteps / 60;
  }

  /** Revolutions a minute at a step rate. */
  public static double rpm(double hertz, double fullSteps, double microsteps) {
    OutOfDomain.positive("full steps", fullSteps);
    OutOfDomain.positive("microsteps", microsteps);
    return OutOfDomain.notNegative("the step rate in Hz", hertz) * 60 / (fullSteps * microsteps);
  }

  /** The highest step rate that least pulse times in seconds leave. */
  public static double ceilingHertz(double highSeconds, double lowSeconds) {
    OutOfDomain.positive("the high time in s", highSeconds);
    return 1 / (highSeconds + OutOfDomain.positive("the low time in s", lowSeconds));
  }
}
