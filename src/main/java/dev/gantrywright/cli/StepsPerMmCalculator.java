package dev.gantrywright.cli;

import dev.gantrywright.physics.StepsPerMm;
import java.util.Objects;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute steps-per-mm. */
@Command(
    name = "steps-per-mm",
    description = "Steps/mm of a belt, a screw or a hobbed wheel, and the travel of one microstep.")
final class StepsPerMmCalculator extends Calculator {
  @Option(
      names = "--full-steps",
      paramLabel = "N",
      defaultValue = "200",
      description = "Full steps of one motor turn (default ${DEFAULT-VALUE}, a 1.8° motor).")
  double fullSteps;

  @Option(
      names = "--microsteps",
      paramLabel = "N",
      required = true,
      description = "Microsteps of one full step.")
  double microsteps;

  @Option(names = "--belt-pitch", paramLabel = "MM", description = "Pitch of the belt.")
  Double beltPitch;

  @Option(names = "--teeth", paramLabel = "N", description = "Teeth of the pulley.")
  Double teeth;

  @Option(
      names = "--lead",
      paramLabel = "MM",
      description = "Travel of the nut at one turn of the screw: pitch times starts.")
  Double lead;

  @Option(
      names = "--gear-diameter",
      paramLabel = "MM",
      description = "Effective diameter of a hobbed wheel.")
  Double gearDiameter;

  @Option(
      names = "--ratio",
      paramLabel = "R",
      defaultValue = "1",
      description = "Motor turns for one turn of the pulley, screw or wheel (default 1).")
  double ratio;

  @Override
  Answer answer() {
    whole(fullSteps, "--full-steps");
    whole(microsteps, "--microsteps");
    boolean belt = beltPitch != null || teeth != null;
    long drives =
        Stream.of(belt ? true : null, lead, gearDiameter).filter(Objects::nonNull).count();
    if (drives != 1) {
      throw problem("give one drive: --belt-pitch with --teeth, or --lead, or --gear-diameter");
    }
    if (belt) {
      double pitch = needed(beltPitch, "--belt-pitch", "the distance between teeth in mm");
      double count = whole(needed(teeth, "--teeth", "the teeth of the pulley"), "--teeth");
      return answer(
          StepsPerMm.belt(fullSteps, microsteps, pitch, count, ratio),
          "full steps x microsteps x ratio / (pitch x teeth)");
    }
    if (lead != null) {
      return answer(
          StepsPerMm.screw(fullSteps, microsteps, lead, ratio),
          "full steps x microsteps x ratio / lead");
    }
    return answer(
        StepsPerMm.wheel(fullSteps, microsteps, gearDiameter, ratio),
        "full steps x microsteps x ratio / (pi x diameter)");
  }

  private static Answer answer(double stepsPerMm, String formula) {
    return new Answer()
        .figure("stepsPerMm", "steps/mm", stepsPerMm, "")
        .figure("resolutionMm", "one microstep", StepsPerMm.resolutionMm(stepsPerMm), "mm")
        .line("formula", formula)
        .line("source", "definition");
  }
}
