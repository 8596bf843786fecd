package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class OtherUartsTest {
  /** RM0008 Table 192, RM0390 tables 150 and 152. */
  @ParameterizedTest
  @CsvSource({
    "36000000, 115200, false, 19.5, 0.160",
    "72000000, 115200, false, 39.0625, 0",
    "72000000, 4500000, false, 1, 0",
    "24000000, 460800, true, 6.5, 0.160",
    "24000000, 3000000, true, 1, 0",
    "24000000, 9000000, true, 1, -66.667",
    "24000000, 9000000, false, 1, -83.333",
    "168000000, 100, false, 4095.9375, 2463.516",
    "168000000, 100, true, 4095.875, 5027.110",
  })
  void stm32(long clock, long baud, boolean over8, double divisor, double error) {
    BaudSetting setting = Stm32Uart.setting(clock, baud, over8);
    assertThat(setting.divisor()).isEqualTo(divisor);
    assertThat(setting.errorPercent()).isCloseTo(error, within(0.001));
  }

  /** RM0008: 27.75 gives 0x1BC, 25.62 gives 0x19A, 50.99 carries to 0x330. */
  @ParameterizedTest
  @CsvSource({
    "27.75, false, 0x1BC, 0x1BC", "25.62, false, 0x19A, 0x19A", "50.99, false, 0x330, 0x330",
    "6.5, true, 0x64, 0x64", "26, true, 0x1A0, 0x1A0", "1, false, 16, 16"
  })
  void registers(double usartDiv, boolean over8, String classic, String shifted) {
    assertThat(Stm32Uart.register(usartDiv, over8)).isEqualTo(Integer.decode(classic));
    assertThat(Stm32Uart.shiftedRegister(usartDiv, over8)).isEqualTo(Integer.decode(shifted));
  }

  @Test
  void registersRefuseWhatTheyCannotHold() {
    assertThatThrownBy(() -> Stm32Uart.register(0.5, false)).isInstanceOf(OutOfDomain.class);
    assertThatThrownBy(() -> Stm32Uart.register(4096, false)).isInstanceOf(OutOfDomain.class);
    assertThatThrownBy(() -> Stm32Uart.shiftedRegister(0.5, false)).isInstanceOf(OutOfDomain.class);
    assertThat(Stm32Uart.register(4095.9375, false)).isEqualTo(0xFFFF);
  }

  @Test
  void stm32ReceiverTolerance() {
    assertThat(Stm32Uart.tolerancePercent(false, false)).isEqualTo(3.75);
    assertThat(Stm32Uart.tolerancePercent(false, true)).isEqualTo(3.33);
    assertThat(Stm32Uart.tolerancePercent(true, false)).isEqualTo(2.5);
    assertThat(Stm32Uart.tolerancePercent(true, true)).isEqualTo(2.0);
  }

  @Test
  void theOtherGeneratorsByHand() {
    // 125 MHz / (16 x 115200) = 67.817, in 1/64: 4340.
    assertThat(Rp2040Uart.setting(125_000_000, 115_200).divisor()).isEqualTo(4340 / 64.0);
    assertThat(Rp2040Uart.setting(125_000_000, 115_200).actualBaud())
        .isCloseTo(115207.373, within(0.001));
    assertThat(Rp2040Uart.setting(125_000_000, 100_000_000).divisor()).isEqualTo(1);
    // 84 MHz / (16 x 250000) = 21 exactly.
    assertThat(SamUart.setting(84_000_000, 250_000).divisor()).isEqualTo(21);
    assertThat(SamUart.setting(84_000_000, 115_200).actualBaud())
        .isCloseTo(84e6 / 16 / 46, within(1e-6));
    assertThat(SamUart.setting(84_000_000, 84_000_000).divisor()).isEqualTo(1);
    // 65536 (1 - 16 x 115200 / 48 MHz) = 63019.4.
    assertThat(SamUart.sercomSetting(48_000_000, 115_200).divisor()).isEqualTo(63019);
    assertThat(SamUart.sercomSetting(48_000_000, 115_200).actualBaud())
        .isCloseTo(115219.116, within(0.001));
    assertThat(SamUart.sercomSetting(48_000_000, 9_000_000).divisor()).isZero();
    // 80 MHz / 115200 = 694.44, in 1/16: 11111.
    assertThat(Esp32Uart.setting(80_000_000, 115_200).divisor()).isEqualTo(11111 / 16.0);
    assertThat(Esp32Uart.setting(80_000_000, 115_200).actualBaud())
        .isCloseTo(115201.152, within(0.001));
    assertThat(Esp32Uart.setting(80_000_000, 160_000_000).divisor()).isEqualTo(1);
  }

  @ParameterizedTest
  @EnumSource(UartKind.class)
  void everyKindIsFoundByNameAndRefusesNonsense(UartKind kind) {
    assertThat(UartKind.of(" " + kind.name().toLowerCase(java.util.Locale.ROOT))).contains(kind);
    assertThatThrownBy(() -> kind.best(0, 9600)).isInstanceOf(OutOfDomain.class);
    assertThatThrownBy(() -> kind.best(16_000_000, 0)).isInstanceOf(OutOfDomain.class);
    assertThat(kind.best(48_000_000, 9600).errorPercent()).isBetween(-1.0, 1.0);
  }

  @Test
  void theBestModeWins() {
    assertThat(UartKind.of("abacus")).isEmpty();
    assertThat(UartKind.AVR.best(16_000_000, 115_200).divisor()).isEqualTo(16);
    assertThat(UartKind.AVR.best(16_000_000, 250_000).divisor()).isEqualTo(3);
    assertThat(UartKind.AVR.usualBaudsWithin(16_000_000, 2.0))
        .contains(250_000L, 500_000L, 1_000_000L, 2_000_000L, 9600L)
        .doesNotContain(115_200L, 460_800L);
  }
}
