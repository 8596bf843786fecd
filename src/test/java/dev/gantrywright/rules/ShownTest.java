package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "80, 80",
    "-80.5, -80.5",
    "415.123456, 415.12",
    "99999.4, 99999",
    "99999.6, 100000",
    "123456, 123460",
    "1234567.8, 1234600",
    "0.00123456, 0.0012346",
    "0.1, 0.1",
    "0.000000125, 0.000000125",
    "9.99999, 10",
    "1e13, 10000000000000",
    "0.5, 0.5",
    "10.0005, 10.001",
    "1e-6, 0.000001",
    "999999999999.9, 1000000000000"
  })
  void aNumberHasFiveSignificantDigitsAndNoExponent(double value, String text) {
    assertThat(Shown.n(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "6.3662, 6.37",
    "-6.3662, -6.37",
    "866.67, 867",
    "12975, 13000",
    "999.6, 1000",
    "0.083333, 0.0833",
    "0.0996, 0.0996",
    "4, 4",
    "1000, 1000",
    "NaN, no number"
  })
  void aComputedFigureHasThreeSignificantDigits(double value, String text) {
    assertThat(Shown.about(value)).isEqualTo(text);
  }

  @Test
  void theQuickWayGivesWhatTheExactExpansionGives() {
    Random dice = new Random(5);
    for (int at = 0; at < 200_000; at++) {
      double value = (dice.nextDouble() - 0.5) * Math.pow(10, dice.nextInt(20) - 8);
      assertThat(Shown.n(value)).isEqualTo(value == 0 ? "0" : Shown.exact(value));
      double tie = (dice.nextInt(200_000) + 0.5) / Math.pow(10, dice.nextInt(9));
      assertThat(Shown.n(tie)).isEqualTo(Shown.exact(tie));
    }
  }

  @Test
  void whatIsNoNumberIsCalledSo() {
    assertThat(Shown.n(Double.NaN)).isEqualTo("no number");
    assertThat(Shown.n(Double.NEGATIVE_INFINITY)).isEqualTo("no number");
  }
}
