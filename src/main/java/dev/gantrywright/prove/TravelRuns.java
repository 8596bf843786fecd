package dev.gantrywright.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Several measured travels of one commanded travel, for the calibration of steps/mm.
 *
 * @param axis name of the axis, such as {@code x}
 * @param commandedMm what was commanded, mm
 * @param measuredMm what was measured, mm, one a run
 * @param readingErrorMm standard uncertainty of one reading, mm
 */
public record TravelRuns(
    String axis, double commandedMm, List<Double> measuredMm, double readingErrorMm) {
  /**
   * Critical values of Grubbs' test, two-sided, 5 %, for 3 to 12 runs: NIST/SEMATECH e-Handbook
   * 1.3.5.17.1, worked out from its formula.
   */
  private static final double[] GRUBBS = {
    1.154, 1.481, 1.715, 1.887, 2.02, 2.127, 2.215, 2.29, 2.355, 2.412
  };

  public TravelRuns {
    measuredMm = List.copyOf(measuredMm);
  }

  public TravelRuns with(double measured) {
    List<Double> more = new ArrayList<>(measuredMm);
    more.add(measured);
    return new TravelRuns(axis, commandedMm, more, readingErrorMm);
  }

  public TravelRuns without(int run) {
    List<Double> fewer = new ArrayList<>(measuredMm);
    fewer.remove(run);
    return new TravelRuns(axis, commandedMm, fewer, readingErrorMm);
  }

  /**
   * The run that does not fit the others, by Grubbs' test; empty with fewer than three runs or more
   * than twelve. Scatter within the reading error is never called an outlier.
   */
  public OptionalInt outlier() {
    int n = measuredMm.size();
    if (n < 3 || n > GRUBBS.length + 2) {
      return OptionalInt.empty();
    }
    double mean = measuredMm.stream().mapToDouble(mm -> mm).average().orElseThrow();
    double squares = measuredMm.stream().mapToDouble(mm -> (mm - mean) * (mm - mean)).sum();
    double deviation = Math.sqrt(squares / (n - 1));
    int worst = 0;
    for (int i = 1; i < n; i++) {
      if (Math.abs(measuredMm.get(i) - mean) > Math.abs(measuredMm.get(worst) - mean)) {
        worst = i;
      }
    }
    double off = Math.abs(measuredMm.get(worst) - mean);
    boolean out = off > GRUBBS[n - 3] * deviation && off > 2 * readingErrorMm;
    return out ? OptionalInt.of(worst) : OptionalInt.empty();
  }
}
