package dev.gantrywright.app;

import dev.gantrywright.physics.Calibration;
import dev.gantrywright.prove.TravelRuns;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * From measured travels to new steps/mm.
 *
 * @param path the field that it is for
 * @param calibration new value and its uncertainty
 * @param warnings what the user should look at first, one line each
 */
public record TravelStudy(String path, Calibration calibration, List<String> warnings) {

  /**
   * Works it out.
   *
   * @param currentStepsPerMm what is in force
   * @param computedStepsPerMm what the drive train gives; 0 where the profile does not say
   * @throws dev.gantrywright.physics.OutOfDomain when a value is not above zero or no run is given
   */
  public static TravelStudy of(
      TravelRuns runs, double currentStepsPerMm, double computedStepsPerMm) {
    Calibration calibration =
        Calibration.of(
            currentStepsPerMm, runs.commandedMm(), runs.measuredMm(), runs.readingErrorMm());
    List<String> warnings = new ArrayList<>();
    runs.outlier()
        .ifPresent(
            i ->
                warnings.add(
                    String.format(
                        Locale.ROOT,
                        "run %d (%.3f mm) does not fit the others: measure it again",
                        i + 1,
                        runs.measuredMm().get(i))));
    double change = Math.abs(calibration.stepsPerMm() - currentStepsPerMm);
    if (change < 2 * calibration.plusMinus()) {
      warnings.add("the change lies within twice its uncertainty: keep the present value");
    }
    if (computedStepsPerMm > 0) {
      double drift = calibration.stepsPerMm() / computedStepsPerMm - 1;
      // Beyond 2 % it is no stretched belt but another part (common practice, no published source).
      if (Math.abs(drift) > 0.02) {
        warnings.add(
            String.format(
                Locale.ROOT,
                "it is %.1f %% off what the drive train gives: look at microsteps, teeth, pitch or"
                    + " lead before you write it",
                100 * drift));
      }
    }
    return new TravelStudy("axes." + runs.axis() + ".stepsPerMm", calibration, warnings);
  }
}
