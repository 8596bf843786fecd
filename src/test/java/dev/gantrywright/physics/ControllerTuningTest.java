package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.gantrywright.physics.Fopdt.Reading;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class ControllerTuningTest {
  private static final Fopdt BED = new Fopdt(2.5, 120, 12);
  private static final UltimatePoint POINT = new UltimatePoint(20, 30);

  private static void gains(Gains gains, double kc, double ti, double td) {
    assertThat(gains.kc()).isCloseTo(kc, within(1e-9));
    assertThat(gains.tiSeconds()).isCloseTo(ti, within(1e-9));
    assertThat(gains.tdSeconds()).isCloseTo(td, within(1e-9));
  }

  @Test
  void closedLoopRules() {
    assertThat(POINT.zieglerNicholsP().kc()).isEqualTo(10);
    assertThat(POINT.zieglerNicholsP().tiSeconds()).isInfinite();
    assertThat(POINT.zieglerNicholsP().tdSeconds()).isZero();
    gains(POINT.zieglerNicholsPi(), 20 / 2.2, 25, 0);
    gains(POINT.zieglerNicholsPid(), 20 / 1.7, 15, 3.75);
    gains(POINT.classicPi(), 9, 25, 0);
    gains(POINT.classicPid(), 12, 15, 3.75);
    gains(POINT.tyreusLuybenPi(), 6.25, 66, 0);
    gains(POINT.tyreusLuybenPid(), 20 / 2.2, 66, 30 / 6.3);
  }

  @Test
  void openLoopRules() {
    gains(BED.zieglerNicholsPi(), 3.6, 40, 0);
    gains(BED.zieglerNicholsPid(), 4.8, 24, 6);
    gains(BED.cohenCoonPi(), 4 * (0.9 + 0.1 / 12), 12 * 30.3 / 11, 0);
    gains(BED.cohenCoonPid(), 4 * (4 / 3.0 + 0.025), 12 * 32.6 / 13.8, 48 / 11.2);
    gains(BED.simcPi(12), 2, 96, 0);
    gains(BED.simcPi(60), 120 / (2.5 * 72), 120, 0);
  }

  @Test
  void otherForms() {
    Gains gains = new Gains(10, 15, 3.75);
    assertThat(gains.ki()).isCloseTo(0.6666667, within(1e-6));
    assertThat(gains.kd()).isEqualTo(37.5);
    assertThat(POINT.zieglerNicholsP().ki()).isZero();
  }

  @Test
  void theUltimatePointOfAProcess() {
    UltimatePoint ultimate = BED.ultimate();
    assertThat(ultimate.ku()).isCloseTo(6.54022157, within(1e-6));
    assertThat(ultimate.puSeconds()).isCloseTo(46.2000469, within(1e-6));
    assertThat(UltimatePoint.ofRelay(50, 2, 30).ku()).isCloseTo(31.8309886, within(1e-6));
    assertThat(UltimatePoint.ofRelay(50, 2, 30).puSeconds()).isEqualTo(30);
  }

  /** A made step response of a known process is found again. */
  @Test
  void fitsAStepResponse() {
    List<Reading> readings = new ArrayList<>();
    for (double t = 0; t <= 1500; t += 1) {
      double rise = t < 12 ? 0 : 1 - Math.exp(-(t - 12) / 120);
      readings.add(new Reading(t, 25 + 2.5 * 40 * rise));
    }
    Fopdt found = Fopdt.fit(readings, 40);
    assertThat(found.gain()).isCloseTo(2.5, within(0.001));
    assertThat(found.tauSeconds()).isCloseTo(120, within(0.5));
    assertThat(found.deadSeconds()).isCloseTo(12, within(0.5));
  }

  @Test
  void interpolatesBetweenReadings() {
    List<Reading> readings =
        List.of(
            new Reading(0, 0), new Reading(100, 0), new Reading(200, 0.566), new Reading(300, 1));
    // 28.3 % falls at 150 s, 63.2 % at 200 + 100 (0.632 - 0.566) / 0.434.
    double late = 200 + 100 * 0.066 / 0.434;
    Fopdt found = Fopdt.fit(readings, 1);
    assertThat(found.tauSeconds()).isCloseTo(1.5 * (late - 150), within(1e-9));
    assertThat(found.deadSeconds()).isCloseTo(late - 1.5 * (late - 150), within(1e-9));
  }

  @Test
  void refusesWhatHasNoMeaning() {
    List<Reading> flat =
        List.of(new Reading(0, 5), new Reading(1, 5), new Reading(2, 5), new Reading(3, 5));
    for (ThrowingCallable call :
        List.<ThrowingCallable>of(
            () -> new Fopdt(0, 1, 1),
            () -> new Fopdt(1, 0, 1),
            () -> new Fopdt(1, 1, 0),
            () -> BED.simcPi(-1),
            () -> new UltimatePoint(0, 1),
            () -> new UltimatePoint(1, 0),
            () -> UltimatePoint.ofRelay(0, 1, 1),
            () -> UltimatePoint.ofRelay(1, 0, 1),
            () -> Fopdt.fit(flat, 1),
            () -> Fopdt.fit(flat.subList(0, 3), 1),
            () -> Fopdt.fit(flat, 0))) {
      assertThatThrownBy(call).isInstanceOf(OutOfDomain.class);
    }
    assertThat(BED.simcPi(0).kc()).isEqualTo(4);
  }
}
