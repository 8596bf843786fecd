package dev.gantrywright.cli;

import dev.gantrywright.app.TravelStudy;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.physics.Calibration;
import dev.gantrywright.prove.TravelRuns;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

  @Option(
      names = "--for",
      paramLabel = "PROFILE",
      description = "The printer that was measured: it goes into that printer's history.")
  Path profile;

  @Option(
      names = "--axis",
      paramLabel = "AXIS",
      description = "With --for: the axis that was measured, such as x.")
  String axis;

  @Mixin HistoryOption history;

  private void keep() {
    if (profile == null) {
      refuse(axis != null, "--axis", "it says which axis of --for PROFILE was measured");
      return;
    }
    PrinterProfile printer = Profiles.read(profile);
    needed(axis, "--axis", "which axis of the printer was measured");
    if (!printer.axes().containsKey(axis)) {
      throw problem(
          profile
              + " has no axis '"
              + axis
              + "'; it has "
              + String.join(", ", printer.axes().keySet()));
    }
    TravelRuns runs = new TravelRuns(axis, commanded, measured, readingError);
    history.keep(
        spec,
        profile,
        past -> past.calibrated(printer, runs, current, TravelStudy.of(runs, current, 0)));
  }

  @Override
  Answer answer() {
    Calibration result = Calibration.of(current, commanded, measured, readingError);
    keep();
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
