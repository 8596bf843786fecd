package dev.gantrywright.cli;

import dev.gantrywright.physics.Calibration;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute calibrate. */
@Command(
    name = "calibrate",
    description = "New steps/mm from a commanded and a measured travel, with its uncertainty.")
final class CalibrateCalculator extends Calculator {
  @Option(names = "--current", paramLabel = "N", required = true, description = "Steps/mm in use.")
  double current;

  @Option(
      names = "--commanded",
      paramLabel = "MM",
      required = true,
      description = "Travel that was commanded.")
  double commanded;

  @Option(
      names = "--measured",
      paramLabel = "MM",
      required = true,
      arity = "1..*",
      description = "Travel that was measured; one number for each run.")
  List<Double> measured;

  @Option(
      names = "--reading-error",
      paramLabel = "MM",
      defaultValue = "0.02",
      description = "Standard uncertainty of one reading (default ${DEFAULT-VALUE} mm).")
  double readingError;

  @Override
  Answer answer() {
    Calibration result = Calibration.of(current, commanded, measured, readingError);
    Answer answer =
        new Answer()
            .figure("stepsPerMm", "steps/mm", result.stepsPerMm(), "")
            .figure("plusMinus", "plus or minus", result.plusMinus(), "")
            .line("change", Answer.sixDigits(result.changePercent(current)) + " %")
            .line("formula", "current x commanded / measured")
            .line(
                "source",
                "proportion; uncertainty by first-order propagation, JCGM 100 (GUM), "
                    + result.runs()
                    + (result.runs() == 1 ? " run" : " runs"));
    if (Math.abs(result.changePercent(current)) > 5) {
      answer.line("mind", "more than 5 % off is a wrong part or setting, not wear");
    }
    return answer;
  }
}
