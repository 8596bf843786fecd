package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Drive;
import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.ui.quantity.Shown;
import java.util.Optional;

/** Figures of a drive train: travel and microsteps of a turn, and the steps/mm that follow. */
public final class DriveFigures {
  private DriveFigures() {}

  /** Travel for one turn of the motor, mm. */
  public static Optional<Double> travelOfATurn(Axis axis) {
    Drive drive = axis.drive();
    double ratio = drive.ratio() == null ? 1 : drive.ratio();
    return travelOfTheShaft(drive).map(travel -> travel / ratio);
  }

  private static Optional<Double> travelOfTheShaft(Drive drive) {
    if (drive.kind() == DriveKind.BELT && drive.pitch() != null && drive.teeth() != null) {
      return Optional.of(drive.pitch() * drive.teeth());
    }
    if (drive.kind() == DriveKind.SCREW && drive.lead() != null) {
      return Optional.of(drive.lead());
    }
    if (drive.kind() == DriveKind.GEAR && drive.gearDiameter() != null) {
      return Optional.of(Math.PI * drive.gearDiameter());
    }
    return Optional.empty();
  }

  /** Microsteps for one turn of the motor. */
  public static Optional<Double> microstepsOfATurn(Axis axis) {
    Integer full = axis.motor().fullSteps();
    Integer micro = axis.driver().microsteps();
    return full == null || micro == null ? Optional.empty() : Optional.of((double) full * micro);
  }

  /** Steps/mm that motor, microsteps and drive train give. */
  public static Optional<Double> stepsPerMm(Axis axis) {
    return microstepsOfATurn(axis)
        .flatMap(steps -> travelOfATurn(axis).map(travel -> steps / travel));
  }

  /** The formula with its figures, {@code 200 × 16 / (2 × 20) = 80}; empty where one is missing. */
  public static Optional<String> formula(Axis axis) {
    Drive drive = axis.drive();
    return stepsPerMm(axis)
        .map(
            result -> {
              String turn =
                  switch (drive.kind()) {
                    case BELT -> "(" + Shown.number(drive.pitch()) + " × " + drive.teeth() + ")";
                    case SCREW -> Shown.number(drive.lead());
                    case GEAR -> "(π × " + Shown.number(drive.gearDiameter()) + ")";
                  };
              boolean geared = drive.ratio() != null && drive.ratio() != 1;
              return axis.motor().fullSteps()
                  + " × "
                  + axis.driver().microsteps()
                  + (geared ? " × " + Shown.number(drive.ratio()) : "")
                  + " / "
                  + turn
                  + (exact(result) ? " = " : " ≈ ")
                  + shown(result);
            });
  }

  private static boolean exact(double value) {
    return Math.abs(value - Math.rint(value * 100) / 100) < 1e-9;
  }

  private static String shown(double value) {
    return Shown.number(Math.rint(value * 100) / 100);
  }

  /** The figures under the picture. */
  public static String words(Axis axis) {
    StringBuilder words = new StringBuilder();
    travelOfATurn(axis)
        .ifPresent(
            travel ->
                words.append(
                    Texts.of("drive.turn", Shown.number(Math.rint(travel * 1000) / 1000))));
    microstepsOfATurn(axis)
        .ifPresent(
            steps ->
                words
                    .append(words.isEmpty() ? "" : "  ·  ")
                    .append(Texts.of("drive.steps", Shown.grouped(steps))));
    stepsPerMm(axis)
        .ifPresent(
            steps ->
                words
                    .append("  ·  ")
                    .append(Texts.of("drive.resolution", Shown.rough(1000 / steps))));
    return words.toString();
  }
}
