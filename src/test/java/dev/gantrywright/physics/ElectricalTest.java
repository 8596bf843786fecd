package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class ElectricalTest {
  private static void refuses(ThrowingCallable... calls) {
    for (ThrowingCallable call : List.of(calls)) {
      assertThatThrownBy(call).isInstanceOf(OutOfDomain.class);
    }
  }

  /** ASTM B258: AWG 36 is 0.127 mm by definition, 0000 is 11.684 mm. */
  @Test
  void wire() {
    assertThat(Wire.gaugeDiameterMm(36)).isEqualTo(0.127);
    assertThat(Wire.gaugeDiameterMm(-3)).isCloseTo(11.684, within(0.001));
    assertThat(Wire.gaugeDiameterMm(22)).isCloseTo(0.6438033, within(1e-6));
    assertThat(Wire.gaugeAreaMm2(14)).isCloseTo(2.0809077, within(1e-6));
    assertThat(Wire.dropVolts(10, 1, 0.75)).isCloseTo(0.45976, within(1e-6));
    assertThat(Wire.dropVolts(0, 0, 0.75)).isZero();
    assertThat(Wire.deratedAmps(15, 0.87)).isCloseTo(13.05, within(1e-12));
    refuses(
        () -> Wire.gaugeDiameterMm(-4),
        () -> Wire.gaugeDiameterMm(57),
        () -> Wire.dropVolts(-1, 1, 1),
        () -> Wire.dropVolts(1, -1, 1),
        () -> Wire.dropVolts(1, 1, 0),
        () -> Wire.deratedAmps(-1, 1),
        () -> Wire.deratedAmps(1, 1.1));
  }

  @Test
  void fuses() {
    assertThat(Fuse.leastRatingAmps(6, Fuse.UL_SHARE)).isEqualTo(8);
    assertThat(Fuse.leastRatingAmps(6, Fuse.IEC_SHARE)).isEqualTo(6);
    assertThat(Fuse.leastRatingAmps(0, 1)).isZero();
    refuses(
        () -> Fuse.leastRatingAmps(-1, 1),
        () -> Fuse.leastRatingAmps(1, 1.01),
        () -> Fuse.leastRatingAmps(1, 0));
  }

  @Test
  void heaters() {
    assertThat(HeaterPower.ohms(24, 40)).isCloseTo(14.4, within(1e-12));
    assertThat(HeaterPower.amps(24, 60)).isEqualTo(2.5);
    assertThat(HeaterPower.watts(12, 14.4)).isCloseTo(10, within(1e-12));
    assertThat(HeaterPower.powerRatio(24, 12)).isEqualTo(4);
    refuses(
        () -> HeaterPower.ohms(0, 1),
        () -> HeaterPower.ohms(1, 0),
        () -> HeaterPower.amps(0, 1),
        () -> HeaterPower.amps(1, -1),
        () -> HeaterPower.watts(-1, 1),
        () -> HeaterPower.watts(1, 0),
        () -> HeaterPower.powerRatio(-1, 1),
        () -> HeaterPower.powerRatio(1, 0));
  }

  @Test
  void inputs() {
    assertThat(InputLevel.thresholdVolts(0.65, 3.3)).isCloseTo(2.145, within(1e-12));
    assertThat(InputLevel.highMarginVolts(2.4, 3)).isCloseTo(-0.6, within(1e-12));
    assertThat(InputLevel.dividedVolts(24, 10_000, 1500)).isCloseTo(3.130435, within(1e-6));
    assertThat(InputLevel.pullAmps(3.3, 40_000)).isCloseTo(82.5e-6, within(1e-12));
    assertThat(InputLevel.timeConstantSeconds(10_000, 100e-9)).isCloseTo(1e-3, within(1e-12));
    assertThat(InputLevel.debounceSamples(0.010, 0.002)).isEqualTo(5);
    assertThat(InputLevel.debounceSamples(0.157, 0.005)).isEqualTo(32);
    assertThat(InputLevel.debounceSamples(0, 0.005)).isZero();
    refuses(
        () -> InputLevel.thresholdVolts(1.1, 5),
        () -> InputLevel.thresholdVolts(0.5, 0),
        () -> InputLevel.dividedVolts(5, -1, 1),
        () -> InputLevel.dividedVolts(5, 1, 0),
        () -> InputLevel.pullAmps(5, 0),
        () -> InputLevel.timeConstantSeconds(-1, 1),
        () -> InputLevel.timeConstantSeconds(1, -1),
        () -> InputLevel.debounceSamples(-1, 1),
        () -> InputLevel.debounceSamples(1, 0));
  }

  @Test
  void serialTiming() {
    assertThat(SerialTiming.frameBits(8, 0, 1)).isEqualTo(10);
    assertThat(SerialTiming.frameBits(7, 1, 2)).isEqualTo(11);
    assertThat(SerialTiming.byteSeconds(250_000, 10)).isCloseTo(40e-6, within(1e-12));
    assertThat(SerialTiming.bytesPerSecond(250_000, 10)).isCloseTo(25_000, within(1e-6));
    assertThat(SerialTiming.transferSeconds(524_288, 250_000, 10))
        .isCloseTo(20.97152, within(1e-9));
    refuses(
        () -> SerialTiming.frameBits(4, 0, 1),
        () -> SerialTiming.frameBits(8, 2, 1),
        () -> SerialTiming.frameBits(8, 0, 0),
        () -> SerialTiming.byteSeconds(0, 10),
        () -> SerialTiming.byteSeconds(9600, 0),
        () -> SerialTiming.transferSeconds(-1, 9600, 10));
  }

  @Test
  void messagesArePlain() {
    assertThatThrownBy(() -> HeaterPower.ohms(-2, 1))
        .hasMessage("the voltage in V must be above zero, got -2");
    assertThatThrownBy(() -> HeaterPower.ohms(-2.5, 1)).hasMessageEndingWith("got -2.5");
    assertThatThrownBy(() -> HeaterPower.ohms(-1e20, 1)).hasMessageEndingWith("got -1.0E20");
    assertThatThrownBy(() -> Wire.deratedAmps(1, 2))
        .hasMessage("the derating factor must lie between 0 and 1, got 2");
  }
}
