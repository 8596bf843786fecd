package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of the A4988, DRV8825, TMC2209 and TMC5160 data sheets. */
class DriverCurrentTest {
  @Test
  void vrefDriversSetThePeak() {
    assertThat(DriverCurrent.vrefPeakAmps(0.8, 8, 0.1)).isCloseTo(1, within(1e-12));
    assertThat(DriverCurrent.vrefPeakAmps(2.5, 5, 0.25)).isCloseTo(2, within(1e-12));
    assertThat(DriverCurrent.vrefPeakAmps(0, 5, 0.25)).isZero();
    assertThat(DriverCurrent.vrefVolts(1.5, 8, 0.1)).isCloseTo(1.2, within(1e-12));
    assertThat(DriverCurrent.tripVolts(3.3, 5)).isCloseTo(0.66, within(1e-12));
  }

  @Test
  void scaledDriversSetTheRms() {
    assertThat(DriverCurrent.scaledRmsAmps(31, 0.325, 0.11, 0.02)).isCloseTo(1.7678, within(1e-4));
    assertThat(DriverCurrent.scaledRmsAmps(15, 0.325, 0.11, 0.02)).isCloseTo(0.8839, within(1e-4));
    assertThat(DriverCurrent.scaledRmsAmps(0, 0.325, 0.11, 0.02)).isCloseTo(0.05524, within(1e-5));
    assertThat(DriverCurrent.scaledRmsAmps(31, 0.325, 0.11, 0.02, 1.2, 2.5))
        .isCloseTo(0.848528, within(1e-6));
    assertThat(DriverCurrent.globalRmsAmps(256, 31, 0.325, 0.075))
        .isCloseTo(3.064129, within(1e-6));
    assertThat(DriverCurrent.globalRmsAmps(128, 31, 0.325, 0.075))
        .isCloseTo(1.532065, within(1e-6));
    assertThat(DriverCurrent.globalRmsAmps(1, 31, 0.325, 0.075))
        .isCloseTo(3.064129 / 256, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"0.8, 0.11, 13", "1.64, 0.1, 26", "1.2, 0.15, 27", "9, 0.11, 31", "0.001, 0.11, 0"})
  void theScaleNeverExceedsTheWantedCurrent(double rms, double sense, int scale) {
    assertThat(DriverCurrent.scaleFor(rms, 0.325, sense, 0.02)).isEqualTo(scale);
  }

  @Test
  void theScaleOfAnExactCurrentIsThatScale() {
    for (int scale = 0; scale <= 31; scale++) {
      double rms = DriverCurrent.scaledRmsAmps(scale, 0.325, 0.11, 0.02);
      assertThat(DriverCurrent.scaleFor(rms, 0.325, 0.11, 0.02)).isEqualTo(scale);
    }
  }

  @Test
  void peakRmsAndTheRest() {
    assertThat(DriverCurrent.peakOfRms(1)).isCloseTo(1.41421356, within(1e-8));
    assertThat(DriverCurrent.rmsOfPeak(2)).isCloseTo(1.41421356, within(1e-8));
    assertThat(DriverCurrent.voltageModeLeastAmps(24, 2.0 / 1024, 24, 5))
        .isCloseTo(0.225, within(1e-12));
    assertThat(DriverCurrent.velocityUnitHertz(12e6)).isCloseTo(0.715, within(0.0005));
  }

  @Test
  void refusesWhatHasNoMeaning() {
    for (ThrowingCallable call :
        List.<ThrowingCallable>of(
            () -> DriverCurrent.vrefPeakAmps(-1, 8, 0.1),
            () -> DriverCurrent.vrefPeakAmps(1, 0, 0.1),
            () -> DriverCurrent.vrefPeakAmps(1, 8, 0),
            () -> DriverCurrent.vrefVolts(-1, 8, 0.1),
            () -> DriverCurrent.vrefVolts(1, 0, 0.1),
            () -> DriverCurrent.vrefVolts(1, 8, 0),
            () -> DriverCurrent.tripVolts(-1, 8),
            () -> DriverCurrent.tripVolts(1, 0),
            () -> DriverCurrent.scaledRmsAmps(-1, 0.325, 0.1, 0.02),
            () -> DriverCurrent.scaledRmsAmps(32, 0.325, 0.1, 0.02),
            () -> DriverCurrent.scaledRmsAmps(1, 0, 0.1, 0.02),
            () -> DriverCurrent.scaledRmsAmps(1, 0.325, 0, 0.02),
            () -> DriverCurrent.scaledRmsAmps(1, 0.325, 0.1, -1),
            () -> DriverCurrent.scaledRmsAmps(1, 0.325, 0.1, 0.02, 2.6, 2.5),
            () -> DriverCurrent.scaledRmsAmps(1, 0.325, 0.1, 0.02, -1, 2.5),
            () -> DriverCurrent.globalRmsAmps(0, 1, 0.325, 0.1),
            () -> DriverCurrent.globalRmsAmps(257, 1, 0.325, 0.1),
            () -> DriverCurrent.scaleFor(0, 0.325, 0.1, 0.02),
            () -> DriverCurrent.voltageModeLeastAmps(24, 0.1, 24, 0),
            () -> DriverCurrent.velocityUnitHertz(0))) {
      assertThatThrownBy(call).isInstanceOf(OutOfDomain.class);
    }
  }
}
