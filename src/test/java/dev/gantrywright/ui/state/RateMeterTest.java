package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RateMeterTest {
  private final RateMeter rate = new RateMeter();

  @Test
  void knowsNothingAtFirst() {
    rate.count(0, 5);
    assertThat(rate.hertz()).isZero();
  }

  @Test
  void twentyASecondAreTwentyHertz() {
    for (int i = 0; i < 100; i++) {
      rate.count(i * 50_000_000L, i);
    }
    assertThat(rate.hertz()).isCloseTo(20, within(0.01));
  }

  @Test
  void aCountThatStartsAnewIsNotNegative() {
    rate.count(0, 1000);
    rate.count(1_000_000_000L, 1020);
    rate.count(1_100_000_000L, 3);
    assertThat(rate.hertz()).isZero();
  }
}
