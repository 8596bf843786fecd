package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of ATmega640..2561 data sheet Table 109 and DS40002061A section 20.8.3. */
class AvrUartTest {
  @ParameterizedTest
  @CsvSource({
    "16000000, 115200, false, 8, 111111.111, -3.549",
    "16000000, 115200, true, 16, 117647.059, 2.124",
    "16000000, 250000, false, 3, 250000, 0",
    "20000000, 57600, true, 42, 58139.535, 0.937",
    // Beyond the register's ends the end itself answers.
    "16000000, 9000000, false, 0, 1000000, -88.889",
    "16000000, 100, false, 4095, 244.141, 144.141",
  })
  void theNearestDivisorAndItsError(
      long clock, long baud, boolean u2x, int ubrr, double actual, double error) {
    BaudSetting setting = AvrUart.setting(clock, baud, u2x);
    assertThat(setting.divisor()).isEqualTo(ubrr);
    assertThat(setting.actualBaud()).isCloseTo(actual, within(0.001));
    assertThat(setting.errorPercent()).isCloseTo(error, within(0.001));
  }

  @Test
  void aTieGoesToTheSlowerRate() {
    // 16 MHz / (16 x 400000) = 2.5 stands exactly between UBRR 1 and 2.
    assertThat(AvrUart.setting(16_000_000, 400_000, false).divisor()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({
    "5, false, 93.20, 106.67",
    "8, false, 95.36, 104.58",
    "10, false, 96.17, 103.78",
    "8, true, 96.00, 103.90",
  })
  void theReceiversWindow(int bits, boolean u2x, double slow, double fast) {
    ReceiverWindow window = AvrUart.window(bits, u2x);
    assertThat(window.slowRatio() * 100).isCloseTo(slow, within(0.015));
    assertThat(window.fastRatio() * 100).isCloseTo(fast, within(0.015));
    assertThat(window.slowPercent()).isCloseTo(slow - 100, within(0.015));
    assertThat(window.fastPercent()).isCloseTo(fast - 100, within(0.015));
  }

  @Test
  void theWindowAcceptsItsEndsAndNothingBeyond() {
    ReceiverWindow window = AvrUart.window(8, false);
    assertThat(window.accepts(0)).isTrue();
    assertThat(window.accepts(window.slowPercent())).isTrue();
    assertThat(window.accepts(window.fastPercent())).isTrue();
    assertThat(window.accepts(window.slowPercent() - 0.01)).isFalse();
    assertThat(window.accepts(window.fastPercent() + 0.01)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "5, false, 3.0",
    "6, false, 2.5",
    "8, false, 2.0",
    "10, false, 1.5",
    "5, true, 2.5",
    "8, true, 1.5",
    "10, true, 1.0"
  })
  void theRecommendedError(int bits, boolean u2x, double percent) {
    assertThat(AvrUart.recommendedErrorPercent(bits, u2x)).isEqualTo(percent);
  }

  @Test
  void anIdealReceiverOfTenBitsBearsFivePercent() {
    assertThat(ReceiverWindow.idealMismatchPercent(10)).isCloseTo(5.263, within(0.001));
    assertThatThrownBy(() -> ReceiverWindow.idealMismatchPercent(2))
        .isInstanceOf(OutOfDomain.class);
  }

  @Test
  void refusesWhatHasNoMeaning() {
    assertThatThrownBy(() -> AvrUart.setting(0, 9600, false)).hasMessageContaining("clock");
    assertThatThrownBy(() -> AvrUart.setting(16, 0, false)).hasMessageContaining("baud");
    assertThatThrownBy(() -> AvrUart.setting(100_000_000_001L, 1, false))
        .hasMessageContaining("100 GHz");
    assertThatThrownBy(() -> AvrUart.setting(1, 100_000_000_001L, false))
        .hasMessageContaining("100 GHz");
    assertThat(AvrUart.setting(100_000_000_000L, 100_000_000_000L, true).divisor()).isZero();
    assertThatThrownBy(() -> AvrUart.baud(0, 1, false)).hasMessageContaining("clock");
    assertThatThrownBy(() -> AvrUart.baud(16, -1, false)).hasMessageContaining("UBRR");
    assertThatThrownBy(() -> AvrUart.baud(16, 4096, false)).hasMessageContaining("UBRR");
    assertThatThrownBy(() -> AvrUart.window(4, false)).hasMessageContaining("bits");
    assertThatThrownBy(() -> AvrUart.recommendedErrorPercent(11, false))
        .hasMessageContaining("bits");
  }
}
