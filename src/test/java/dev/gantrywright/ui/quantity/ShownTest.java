package dev.gantrywright.ui.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
  @ParameterizedTest
  @CsvSource({
    "80, 80",
    "80.0, 80",
    "0.11, 0.11",
    "1e-4, 0.0001",
    "-0.0, 0",
    "1500, 1500",
    "0.1, 0.1",
    "3.3333333333333335, 3.33333333"
  })
  void dropsWhatSaysNothing(double value, String expected) {
    assertThat(Shown.number(value)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"9999, 9999", "115200, 115 200", "-1234567.5, -1 234 567.5", "16000000, 16 000 000"})
  void groupsLongNumbersByThree(double value, String expected) {
    assertThat(Shown.grouped(value)).isEqualTo(expected.replace(' ', '\u00a0'));
  }

  @ParameterizedTest
  @CsvSource({"80, steps/mm, 80~steps/mm", "16, '', 16"})
  void keepsNumberAndUnitTogether(double value, String unit, String expected) {
    assertThat(Shown.with(value, unit)).isEqualTo(expected.replace('~', '\u00a0'));
  }

  @ParameterizedTest
  @CsvSource({"13.3333, 13.3", "0.012345, 0.0123", "31999, 32 000"})
  void roughIsThreeDigits(double value, String expected) {
    assertThat(Shown.rough(value)).isEqualTo(expected.replace(' ', '\u00a0'));
  }
}
