package dev.gantrywright.link.practice;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.practice.EndstopInput.Contact;
import dev.gantrywright.link.practice.EndstopInput.Level;
import dev.gantrywright.link.practice.EndstopInput.Pull;
import dev.gantrywright.link.practice.EndstopInput.Sensor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The electrical table: what an input sees for each contact, pull and sensor. */
class EndstopInputTest {
  @ParameterizedTest
  @CsvSource({
    "NO, UP,     SWITCH, HIGH,     LOW",
    "NC, UP,     SWITCH, LOW,      HIGH",
    "NO, DOWN,   SWITCH, LOW,      HIGH",
    "NC, DOWN,   SWITCH, HIGH,     LOW",
    "NO, NONE,   SWITCH, FLOATING, LOW",
    "NC, NONE,   SWITCH, LOW,      FLOATING",
    "NO, UP,     NPN,    HIGH,     LOW",
    "NC, UP,     NPN,    LOW,      HIGH",
    "NO, DOWN,   PNP,    LOW,      HIGH",
    "NC, DOWN,   PNP,    HIGH,     LOW",
    "NO, DRIVEN, NPN,    HIGH,     LOW",
    "NC, DRIVEN, NPN,    LOW,      HIGH",
    "NO, DRIVEN, PNP,    LOW,      HIGH",
    "NC, DRIVEN, PNP,    HIGH,     LOW",
    // Wired so that nothing ever changes.
    "NO, DOWN,   NPN,    LOW,      LOW",
    "NO, UP,     PNP,    HIGH,     HIGH",
  })
  void levelAtRestAndTouched(Contact contact, Pull pull, Sensor sensor, Level rest, Level touched) {
    EndstopInput input = new EndstopInput("xMin", contact, pull, sensor, false);
    assertThat(input.level(false)).isEqualTo(rest);
    assertThat(input.level(true)).isEqualTo(touched);
  }
}
