package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class MotionTest {
  private static void refuses(ThrowingCallable... calls) {
    for (ThrowingCallable call : List.of(calls)) {
      assertThatThrownBy(call).isInstanceOf(OutOfDomain.class);
    }
  }

  @Test
  void stepsPerMmOfTheThreeDrives() {
    assertThat(StepsPerMm.belt(200, 16, 2, 20, 1)).isEqualTo(80);
    assertThat(StepsPerMm.belt(400, 16, 2, 16, 3)).isEqualTo(600);
    assertThat(StepsPerMm.screw(200, 16, 8, 1)).isEqualTo(400);
    assertThat(StepsPerMm.wheel(200, 16, 11, 1)).isCloseTo(92.59924, within(1e-5));
    assertThat(StepsPerMm.fullSteps(1.8)).isEqualTo(200);
    assertThat(StepsPerMm.resolutionMm(80)).isEqualTo(0.0125);
    refuses(
        () -> StepsPerMm.belt(200, 16, 0, 20, 1),
        () -> StepsPerMm.belt(200, 16, 2, 0, 1),
        () -> StepsPerMm.belt(0, 16, 2, 20, 1),
        () -> StepsPerMm.belt(200, 0, 2, 20, 1),
        () -> StepsPerMm.belt(200, 16, 2, 20, 0),
        () -> StepsPerMm.belt(200, 16, Double.POSITIVE_INFINITY, 20, 1),
        () -> StepsPerMm.screw(200, 16, 0, 1),
        () -> StepsPerMm.wheel(200, 16, -1, 1),
        () -> StepsPerMm.fullSteps(0),
        () -> StepsPerMm.resolutionMm(Double.NaN));
  }

  /** ISO 2904 relations for Tr9x2 and Tr10x1.5. */
  @Test
  void trapezoidalScrews() {
    assertThat(ScrewGeometry.leadMm(2, 4)).isEqualTo(8);
    assertThat(ScrewGeometry.starts(8, 2)).isEqualTo(4);
    assertThat(ScrewGeometry.pitchDiameterMm(9, 2)).isEqualTo(8);
    assertThat(ScrewGeometry.nutMinorDiameterMm(9, 2)).isEqualTo(7);
    assertThat(ScrewGeometry.screwMinorDiameterMm(9, 2, 0.25)).isEqualTo(6.5);
    assertThat(ScrewGeometry.nutMajorDiameterMm(9, 0.25)).isEqualTo(9.5);
    assertThat(ScrewGeometry.clearanceMm(1.5)).isEqualTo(0.15);
    assertThat(ScrewGeometry.clearanceMm(2)).isEqualTo(0.25);
    assertThat(ScrewGeometry.clearanceMm(5)).isEqualTo(0.25);
    assertThat(ScrewGeometry.clearanceMm(6)).isEqualTo(0.5);
    refuses(
        () -> ScrewGeometry.leadMm(0, 1),
        () -> ScrewGeometry.leadMm(2, 0),
        () -> ScrewGeometry.starts(0, 2),
        () -> ScrewGeometry.starts(8, 0),
        () -> ScrewGeometry.clearanceMm(1));
  }

  @Test
  void beltsAndPulleys() {
    assertThat(BeltGeometry.pitchDiameterMm(20, 2)).isCloseTo(12.7323954, within(1e-6));
    assertThat(BeltGeometry.millimetres(0.2)).isCloseTo(5.08, within(1e-12));
    refuses(() -> BeltGeometry.pitchDiameterMm(0, 2), () -> BeltGeometry.pitchDiameterMm(20, 0));
  }

  @Test
  void twoBeltsAndThreeColumns() {
    assertThat(TwoBeltDrive.motorA(3, -4)).isEqualTo(-1);
    assertThat(TwoBeltDrive.motorB(3, -4)).isEqualTo(7);
    assertThat(TwoBeltDrive.x(-1, 7)).isEqualTo(3);
    assertThat(TwoBeltDrive.y(-1, 7)).isEqualTo(-4);
    assertThat(DeltaDrive.carriageMm(105, 215, 210, 30, 40, 10))
        .isCloseTo(161.802634879, within(1e-6));
    assertThat(DeltaDrive.carriageMm(105, 105, 0, 0, 0, 7)).isCloseTo(7, within(1e-5));
    refuses(() -> DeltaDrive.carriageMm(105, 100, 90, 0, 0, 0));
  }

  @Test
  void stepRates() {
    assertThat(StepRate.hertz(80, 200)).isEqualTo(16_000);
    assertThat(StepRate.hertz(80, 0)).isZero();
    assertThat(StepRate.speedMmPerSecond(16_000, 80)).isEqualTo(200);
    assertThat(StepRate.ofRpm(120, 200, 8)).isEqualTo(3200);
    assertThat(StepRate.rpm(3200, 200, 8)).isEqualTo(120);
    assertThat(StepRate.ceilingHertz(1e-6, 3e-6)).isCloseTo(250_000, within(1e-6));
    refuses(
        () -> StepRate.hertz(0, 1),
        () -> StepRate.hertz(80, -1),
        () -> StepRate.hertz(80, Double.POSITIVE_INFINITY),
        () -> StepRate.speedMmPerSecond(-1, 80),
        () -> StepRate.speedMmPerSecond(1, 0),
        () -> StepRate.ofRpm(1, 0, 1),
        () -> StepRate.ofRpm(1, 200, 0),
        () -> StepRate.ofRpm(-1, 200, 1),
        () -> StepRate.rpm(1, 0, 1),
        () -> StepRate.rpm(1, 200, 0),
        () -> StepRate.rpm(-1, 200, 1),
        () -> StepRate.ceilingHertz(0, 1),
        () -> StepRate.ceilingHertz(1, 0));
  }

  /** V = L dI/dt: 24 V, 5 mH, 2 A, 200 steps give 6 revolutions a second. */
  @Test
  void howFastTheCurrentTurns() {
    assertThat(StepperSpeed.fullStepSeconds(24, 0.005, 2)).isCloseTo(0.0008333, within(1e-7));
    assertThat(StepperSpeed.revolutionsPerSecond(24, 0.005, 2, 200)).isCloseTo(6, within(1e-9));
    assertThat(StepperSpeed.supplyVolts(0.0041, 1, 1500)).isCloseTo(12.3, within(1e-9));
    assertThat(StepperSpeed.supplyVolts(0.0041, 2, 1500)).isCloseTo(24.6, within(1e-9));
    assertThat(StepperSpeed.timeConstantSeconds(0.0029, 3.9)).isCloseTo(744e-6, within(1e-6));
    refuses(
        () -> StepperSpeed.fullStepSeconds(0, 1, 1),
        () -> StepperSpeed.fullStepSeconds(1, 0, 1),
        () -> StepperSpeed.fullStepSeconds(1, 1, 0),
        () -> StepperSpeed.revolutionsPerSecond(1, 1, 1, 0),
        () -> StepperSpeed.supplyVolts(0, 1, 1),
        () -> StepperSpeed.supplyVolts(1, 0, 1),
        () -> StepperSpeed.supplyVolts(1, 1, 0),
        () -> StepperSpeed.timeConstantSeconds(0, 1),
        () -> StepperSpeed.timeConstantSeconds(1, 0));
  }

  @Test
  void trapezoidMoves() {
    assertThat(Trapezoid.distanceToReachMm(100, 1000)).isEqualTo(5);
    assertThat(Trapezoid.reaches(10, 100, 1000)).isTrue();
    assertThat(Trapezoid.reaches(9.99, 100, 1000)).isFalse();
    assertThat(Trapezoid.peakSpeed(10, 100, 1000)).isEqualTo(100);
    assertThat(Trapezoid.peakSpeed(2.5, 100, 1000)).isEqualTo(50);
    // 0.1 s up, 0.1 s down over 10 mm; the other 90 mm at 100 mm/s.
    assertThat(Trapezoid.seconds(100, 100, 1000)).isCloseTo(1.1, within(1e-12));
    assertThat(Trapezoid.seconds(2.5, 100, 1000)).isCloseTo(0.1, within(1e-12));
    assertThat(Trapezoid.seconds(0, 100, 1000)).isZero();
    refuses(
        () -> Trapezoid.distanceToReachMm(-1, 1),
        () -> Trapezoid.distanceToReachMm(1, 0),
        () -> Trapezoid.peakSpeed(-1, 1, 1),
        () -> Trapezoid.peakSpeed(1, -1, 1),
        () -> Trapezoid.peakSpeed(1, 1, 0),
        () -> Trapezoid.seconds(1, 0, 1),
        () -> Trapezoid.reaches(-1, 1, 1));
  }
}
