package dev.gantrywright.physics;

/**
 * Steps per millimetre of a drive train: microsteps of one motor turn over the travel of one turn.
 *
 * <p>Source: definition; a belt moves pitch times teeth a turn, a screw its lead, a hobbed wheel
 * its circumference. A reduction multiplies the motor turns.
 */
public final class StepsPerMm {
  private StepsPerMm() {}

  /**
   * @param fullSteps full steps of one motor turn (200 at 1.8°)
   * @param microsteps microsteps of one full step
   * @param pitchMm belt pitch in mm
   * @param teeth teeth of the pulley on the driving shaft
   * @param ratio motor turns for one turn of that shaft; 1 without gears
   */
  public static double belt(
      double fullSteps, double microsteps, double pitchMm, double teeth, double ratio) {
    OutOfDomain.positive("the belt pitch in mm", pitchMm);
    OutOfDomain.positive("the number of teeth", teeth);
    return over(pitchMm * teeth, fullSteps, microsteps, ratio);
  }

  /** As {@link #belt}, for a screw whose nut travels the lead in mm at every turn. */
  public static double screw(double fullSteps, double microsteps, double leadMm, double ratio) {
    OutOfDomain.positive("the lead in mm", leadMm);
    return over(leadMm, fullSteps, microsteps, ratio);
  }

  /** As {@link #belt}, for a hobbed or friction wheel of an effective diameter in mm. */
  public static double wheel(double fullSteps, double microsteps, double diameterMm, double ratio) {
    OutOfDomain.positive("the gear diameter in mm", diameterMm);
    return over(Math.PI * diameterMm, fullSteps, microsteps, ratio);
  }

  /** Full steps of one turn at a step angle in degrees. */
  public static double fullSteps(double stepAngleDegrees) {
    return 360 / OutOfDomain.positive("the step angle in degrees", stepAngleDegrees);
  }

  /** The travel of one microstep in mm. */
  public static double resolutionMm(double stepsPerMm) {
    return 1 / OutOfDomain.positive("steps/mm", stepsPerMm);
  }

  private static double over(double travelMm, double fullSteps, double microsteps, double ratio) {
    OutOfDomain.positive("full steps", fullSteps);
    OutOfDomain.positive("microsteps", microsteps);
    OutOfDomain.positive("the ratio", ratio);
    return fullSteps * microsteps * ratio / travelMm;
  }
}
