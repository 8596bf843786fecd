package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.TemperatureReader;
import dev.gantrywright.prove.TravelRuns;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StudiesTest {
  /** Half power on the practice hotend for eight time constants, read every second. */
  private static StepResponse practiceRun(int seconds) {
    PracticeBoard board = new PracticeBoard(PracticeMachines.plover(), 7, 0);
    board.obey("POWER hotend S0.5", 0);
    List<StepResponse.Point> points = new ArrayList<>();
    for (int s = 0; s <= seconds; s++) {
      double celsius = TemperatureReader.read(board.obey("M105", s * 1_000_000_000L)).get("hotend");
      points.add(new StepResponse.Point(s, celsius));
    }
    return new StepResponse("hotend", 0.5, points);
  }

  @Test
  void findsThePlantThatThePracticeBoardSimulates() {
    StepResponse response = practiceRun(480);
    assertThat(response.settled()).isTrue();
    ThermalStudy study = ThermalStudy.of(response);
    // The practice hotend: 300 K at full power, 60 s, 2 s dead time.
    assertThat(study.model().gain()).isCloseTo(300, within(1.5));
    assertThat(study.model().tauSeconds()).isCloseTo(60, within(1.0));
    assertThat(study.model().deadSeconds()).isCloseTo(2, within(0.3));
    assertThat(study.worstKelvin()).isLessThan(0.5);
    assertThat(study.fitted()).hasSize(response.points().size());
  }

  @Test
  void theRulesFollowFromTheModel() {
    ThermalStudy study = ThermalStudy.of(practiceRun(480));
    double tau = study.model().tauSeconds();
    double dead = study.model().deadSeconds();
    double gain = study.model().gain();
    assertThat(study.rules()).hasSize(5);
    assertThat(study.rules().get("Ziegler–Nichols PID (1942, step response)").kc())
        .isCloseTo(1.2 * tau / (gain * dead), within(1e-9));
    assertThat(study.rules().get("SIMC PI (Skogestad 2003, τc = dead time)").kc())
        .isCloseTo(tau / (gain * 2 * dead), within(1e-9));
    assertThat(study.rules().get("SIMC PI (Skogestad 2003, τc = dead time)").tiSeconds())
        .isCloseTo(Math.min(tau, 8 * dead), within(1e-9));
  }

  @Test
  void aRunThatWasCutShortIsNotSettled() {
    assertThat(practiceRun(60).settled()).isFalse();
  }

  @Test
  void newStepsPerMmWithTheirUncertainty() {
    TravelStudy study =
        TravelStudy.of(new TravelRuns("x", 100, List.of(98.6, 98.62, 98.58), 0.02), 80, 80);
    assertThat(study.path()).isEqualTo("axes.x.stepsPerMm");
    assertThat(study.calibration().stepsPerMm()).isCloseTo(80 * 100 / 98.6, within(1e-3));
    assertThat(study.warnings()).isEmpty();
  }

  @Test
  void warnsOfOutliersOfNothingGainedAndOfAnotherDriveTrain() {
    assertThat(
            TravelStudy.of(
                    new TravelRuns("x", 100, List.of(98.6, 98.62, 98.58, 99.4, 98.61), 0.02), 80, 0)
                .warnings())
        .anyMatch(w -> w.startsWith("run 4 (99.400 mm)"));
    assertThat(TravelStudy.of(new TravelRuns("x", 100, List.of(100.01), 0.02), 80, 80).warnings())
        .containsExactly("the change lies within twice its uncertainty: keep the present value");
    assertThat(TravelStudy.of(new TravelRuns("x", 100, List.of(50.0), 0.02), 80, 80).warnings())
        .anyMatch(w -> w.contains("100.0 % off"));
  }
}
