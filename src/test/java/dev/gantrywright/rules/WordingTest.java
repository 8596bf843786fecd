package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers, places and patterns of paths are spelled. */
class WordingTest {
  @ParameterizedTest
  @CsvSource({
    "160.0, 160",
    "93.33333, 93.333",
    "415.20419, 415.2",
    "0.0125, 0.0125",
    "250000, 250000",
    "1234567, 1234600",
    "-0.00000000001, -0.00000000001",
    "0, 0",
    "NaN, no number",
    "Infinity, no number"
  })
  void numbersShowFiveDigits(double value, String text) {
    assertThat(Shown.n(value)).isEqualTo(text);
  }

  @Test
  void ratesPercentAndAddressesHaveTheirUnits() {
    assertThat(Shown.percent(-3.549)).isEqualTo("-3.55 %");
    assertThat(Shown.percent(2.1)).isEqualTo("+2.10 %");
    assertThat(Shown.hex(134250496)).isEqualTo("0x8008000");
    assertThat(Shown.hertz(84e6)).isEqualTo("84 MHz");
    assertThat(Shown.hertz(32000)).isEqualTo("32 kHz");
    assertThat(Shown.hertz(50)).isEqualTo("50 Hz");
  }

  @ParameterizedTest
  @CsvSource({
    "axes.x.driver.current, 'X axis, driver current'",
    "endstops.zMin.inverted, 'Z min endstop, inverted'",
    "heaters.hotend.pullUpOhms, 'hotend heater, pull up ohms'",
    "serial.nativeUsb, 'serial, native usb'",
    "config/roost.h:12, config/roost.h:12",
    "name, name"
  })
  void placesAreWords(String path, String words) {
    assertThat(Place.of(path)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "axes.*.stepsPerMm, axes.x.stepsPerMm, true",
    "axes.*.stepsPerMm, axes.x.maxSpeed, false",
    "axes.*.drive.**, axes.z.drive.lead, true",
    "axes.*.drive.**, axes.z.driver.ic, false",
    "axes.*.stepsPerMm, axes.x, true",
    "axes, axes.x.stepsPerMm, true",
    "**, anything.at.all, true",
    "serial.port, serial.secondPort, false"
  })
  void aChangeTouchesWhatItsPathMeets(String pattern, String path, boolean touches) {
    assertThat(PathPattern.of(pattern).touches(path.split("\\."))).isEqualTo(touches);
  }
}
