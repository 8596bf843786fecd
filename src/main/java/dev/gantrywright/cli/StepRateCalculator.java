package dev.gantrywright.cli;

import dev.gantrywright.physics.StepRate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute step-rate. */
@Command(name = "step-rate", description = "Step pulses a second that a speed needs.")
final class StepRateCalculator extends Calculator {
  @Option(names = "--steps-per-mm", paramLabel = "N", required = true, description = "Steps/mm.")
  double stepsPerMm;

  @Option(names = "--speed", paramLabel = "MM/S", required = true, description = "Speed in mm/s.")
  double speed;

  @Override
  Answer answer() {
    return new Answer()
        .figure("hertz", "step rate", StepRate.hertz(stepsPerMm, speed), "Hz")
        .line("formula", "steps/mm x speed")
        .line("source", "definition");
  }
}
