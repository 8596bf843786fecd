package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of UM10360 14.4.12 and a search by brute force. */
class Lpc17UartTest {
  @ParameterizedTest
  @CsvSource({
    "14745600, 9600, 96, 0, 1",
    "12000000, 115200, 4, 5, 8",
    "25000000, 250000, 5, 1, 4",
    // 4.8 is 4 x 1.2 and 3 x 1.6: the manual's method aims at a fraction near 1.5.
    "7680000, 100000, 3, 3, 5",
  })
  void theManualsExamples(long pclk, long baud, int dl, int add, int mul) {
    FractionalSetting setting = Lpc17Uart.setting(pclk, baud);
    assertThat(setting.divisor()).isEqualTo(dl);
    assertThat(setting.divAdd()).isEqualTo(add);
    assertThat(setting.mul()).isEqualTo(mul);
  }

  @ParameterizedTest
  @CsvSource({
    "25000000, 115200",
    "25000000, 57600",
    "30000000, 250000",
    "100000000, 921600",
    "25000000, 1000000",
    "120000000, 9600",
    "12000000, 300"
  })
  void noSettingIsBetter(long pclk, long baud) {
    double best = Double.MAX_VALUE;
    for (int mul = 1; mul <= 15; mul++) {
      for (int add = 0; add < mul; add++) {
        for (int dl = add == 0 ? 1 : 3; dl <= 3000; dl++) {
          double actual = pclk / (16.0 * dl * (1 + (double) add / mul));
          best = Math.min(best, Math.abs(actual / baud - 1) * 100);
        }
      }
    }
    FractionalSetting found = Lpc17Uart.setting(pclk, baud);
    assertThat(Math.abs(found.errorPercent())).isCloseTo(best, within(1e-9));
    assertThat(Lpc17Uart.legal(found.divisor(), found.divAdd(), found.mul())).isTrue();
    assertThat(found.actualBaud())
        .isCloseTo(
            Lpc17Uart.baud(pclk, found.divisor(), found.divAdd(), found.mul()), within(1e-9));
    assertThat(found.plain().divisor()).isEqualTo(found.divisor());
    assertThat(found.plain().errorPercent()).isEqualTo(found.errorPercent());
    assertThat(found.plain().actualBaud()).isEqualTo(found.actualBaud());
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0, 1, true",
    "2, 0, 1, true",
    "2, 1, 2, false",
    "3, 1, 2, true",
    "65535, 14, 15, true",
    "65536, 0, 1, false",
    "0, 0, 1, false",
    "10, 8, 8, false",
    "10, 3, 16, false",
    "10, 0, 0, false",
    "10, -1, 4, false",
    "10, 14, 15, true"
  })
  void theManualsLimits(int dl, int add, int mul, boolean legal) {
    assertThat(Lpc17Uart.legal(dl, add, mul)).isEqualTo(legal);
  }

  @Test
  void refusesWhatHasNoMeaning() {
    assertThatThrownBy(() -> Lpc17Uart.setting(0, 9600)).isInstanceOf(OutOfDomain.class);
    assertThatThrownBy(() -> Lpc17Uart.setting(1, 0)).isInstanceOf(OutOfDomain.class);
    assertThatThrownBy(() -> Lpc17Uart.baud(0, 1, 0, 1)).isInstanceOf(OutOfDomain.class);
    assertThatThrownBy(() -> Lpc17Uart.baud(1, 2, 1, 2)).hasMessageContaining("DL 2");
  }
}
