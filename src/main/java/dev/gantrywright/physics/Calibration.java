package dev.gantrywright.physics;

import java.util.List;

/**
 * New steps/mm from a commanded and a measured travel.
 *
 * <p>Source: proportion (common practice); uncertainty by first-order propagation, JCGM 100 (GUM)
 * 5.1, with the scatter of several runs as a Type A part (GUM 4.2). The reading error is taken as
 * the standard uncertainty of one reading.
 *
 * @param stepsPerMm the corrected value
 * @param plusMinus its standard uncertainty
 * @param meanMm mean of the measured travels
 * @param runs number of runs
 */
public record Calibration(double stepsPerMm, double plusMinus, double meanMm, int runs) {

  /** From one run. */
  public static Calibration of(
      double current, double commandedMm, double measuredMm, double readingErrorMm) {
    return of(current, commandedMm, List.of(measuredMm), readingErrorMm);
  }

  /**
   * From several runs of the same commanded travel.
   *
   * @param current steps/mm in use
   * @param commandedMm travel that was commanded
   * @param measuredMm travels that were measured, one a run
   * @param readingErrorMm standard uncertainty of one reading; it does not average out, because the
   *     same scale reads every run
   * @throws OutOfDomain if a value is not above zero or no run is given
   */
  public static Calibration of(
      double current, double commandedMm, List<Double> measuredMm, double readingErrorMm) {
    OutOfDomain.positive("the current steps/mm", current);
    OutOfDomain.positive("the commanded travel in mm", commandedMm);
    OutOfDomain.notNegative("the reading error in mm", readingErrorMm);
    if (measuredMm.isEmpty()) {
      throw new OutOfDomain("at least one measured travel is needed");
    }
    measuredMm.forEach(mm -> OutOfDomain.positive("the measured travel in mm", mm));
    double mean = measuredMm.stream().mapToDouble(mm -> mm).average().orElseThrow();
    double value = current * commandedMm / mean;
    double travelError = Math.hypot(scatterOfMean(measuredMm, mean), readingErrorMm);
    return new Calibration(value, value * travelError / mean, mean, measuredMm.size());
  }

  private static double scatterOfMean(List<Double> measuredMm, double mean) {
    int n = measuredMm.size();
    if (n < 2) {
      return 0;
    }
    double squares = measuredMm.stream().mapToDouble(mm -> (mm - mean) * (mm - mean)).sum();
    return Math.sqrt(squares / (n - 1) / n);
  }

  /** How far the new value lies from the old one, in percent of the old one. */
  public double changePercent(double current) {
    return (stepsPerMm - current) * 100 / OutOfDomain.positive("the current steps/mm", current);
  }
}
