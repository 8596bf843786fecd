package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TravelRunsTest {
  private static TravelRuns runs(double... mm) {
    TravelRuns runs = new TravelRuns("x", 100, List.of(), 0.02);
    for (double one : mm) {
      runs = runs.with(one);
    }
    return runs;
  }

  @Test
  void namesTheRunThatDoesNotFit() {
    assertThat(runs(98.60, 98.62, 98.58, 99.40, 98.61).outlier()).hasValue(3);
    assertThat(runs(98.60, 98.62, 98.58, 99.40, 98.61).without(3).outlier()).isEmpty();
  }

  @Test
  void ordinaryScatterIsNone() {
    assertThat(runs(98.60, 98.62, 98.58, 98.63, 98.61).outlier()).isEmpty();
    // Within the reading error, however odd it looks beside equal readings.
    assertThat(runs(98.60, 98.60, 98.60, 98.62).outlier()).isEmpty();
  }

  @Test
  void twoRunsCannotTell() {
    assertThat(runs(98, 99).outlier()).isEmpty();
    assertThat(runs().outlier()).isEmpty();
    assertThat(runs(98, 98, 98).outlier()).isEmpty();
  }
}
