package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Drive;
import dev.gantrywright.physics.StepsPerMm;
import java.util.Optional;

/**
 * What the stated motor, microsteps and drive give.
 *
 * @param stepsPerMm computed
 * @param travelPerTurn travel of one turn of pulley, screw or wheel, mm
 * @param axis what it was worked out from
 */
record DriveTrain(double stepsPerMm, double travelPerTurn, Axis axis) {
  /** Empty where a fact is missing. */
  static Optional<DriveTrain> of(Axis axis) {
    Drive drive = axis.drive();
    Integer full = axis.motor().fullSteps();
    Integer micro = axis.driver().microsteps();
    double ratio = drive.ratio() == null ? 1 : drive.ratio();
    if (!known(drive.kind(), full, micro) || full <= 0 || micro <= 0 || ratio <= 0) {
      return Optional.empty();
    }
    return travel(drive)
        .map(travel -> new DriveTrain(full * (double) micro * ratio / travel, travel, axis));
  }

  /** The sum in words; made only where it is shown. */
  String words() {
    Double ratio = axis.drive().ratio();
    return axis.motor().fullSteps()
        + " x "
        + axis.driver().microsteps()
        + (ratio == null || ratio == 1 ? "" : " x " + n(ratio))
        + " / "
        + words(axis.drive());
  }

  /** Travel of one turn, mm; empty where the kind's own fact is missing. */
  static Optional<Double> travel(Drive drive) {
    return switch (drive.kind()) {
      case BELT ->
          known(drive.pitch(), drive.teeth()) && drive.pitch() > 0 && drive.teeth() > 0
              ? Optional.of(drive.pitch() * drive.teeth())
              : Optional.empty();
      case SCREW ->
          known(drive.lead()) && drive.lead() > 0 ? Optional.of(drive.lead()) : Optional.empty();
      case GEAR ->
          known(drive.gearDiameter()) && drive.gearDiameter() > 0
              ? Optional.of(1 / StepsPerMm.wheel(1, 1, drive.gearDiameter(), 1))
              : Optional.empty();
    };
  }

  private static String words(Drive drive) {
    return switch (drive.kind()) {
      case BELT -> "(" + n(drive.pitch()) + " mm x " + drive.teeth() + " teeth)";
      case SCREW -> n(drive.lead()) + " mm lead";
      case GEAR -> "(π x " + n(drive.gearDiameter()) + " mm)";
    };
  }
}
