package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CalibrationTest {
  @Test
  void oneRunIsProportionWithTheReadingError() {
    Calibration result = Calibration.of(80, 100, 98.6, 0.02);
    assertThat(result.stepsPerMm()).isCloseTo(81.13590, within(1e-5));
    assertThat(result.plusMinus()).isCloseTo(0.0164576, within(1e-7));
    assertThat(result.meanMm()).isEqualTo(98.6);
    assertThat(result.runs()).isEqualTo(1);
    assertThat(result.changePercent(80)).isCloseTo(1.41988, within(1e-5));
  }

  /** GUM 4.2: s = 0.1, of the mean 0.1/√3 = 0.057735; with 0.05 of reading 0.0763763. */
  @Test
  void severalRunsAddTheirScatter() {
    Calibration result = Calibration.of(80, 100, List.of(93.1, 93.3, 93.2), 0.05);
    assertThat(result.meanMm()).isCloseTo(93.2, within(1e-12));
    assertThat(result.runs()).isEqualTo(3);
    assertThat(result.plusMinus()).isCloseTo(result.stepsPerMm() * 0.0763763 / 93.2, within(1e-6));
  }

  @Test
  void twoEqualRunsHaveNoScatter() {
    assertThat(Calibration.of(80, 100, List.of(98.0, 98.0), 0).plusMinus()).isZero();
    assertThat(Calibration.of(80, 100, List.of(98.0, 98.2), 0).plusMinus()).isPositive();
  }

  @Test
  void refusesWhatHasNoMeaning() {
    assertThatThrownBy(() -> Calibration.of(0, 1, 1, 0)).hasMessageContaining("current");
    assertThatThrownBy(() -> Calibration.of(1, 0, 1, 0)).hasMessageContaining("commanded");
    assertThatThrownBy(() -> Calibration.of(1, 1, 0, 0)).hasMessageContaining("measured");
    assertThatThrownBy(() -> Calibration.of(1, 1, 1, -1)).hasMessageContaining("reading error");
    assertThatThrownBy(() -> Calibration.of(1, 1, List.of(), 0)).hasMessageContaining("at least");
    assertThatThrownBy(() -> Calibration.of(1, 1, 1, 0).changePercent(0))
        .isInstanceOf(OutOfDomain.class);
  }
}
