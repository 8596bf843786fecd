package dev.gantrywright.physics;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.physics.EndstopLogic.Contact;
import dev.gantrywright.physics.EndstopLogic.Input;
import dev.gantrywright.physics.EndstopLogic.Level;
import dev.gantrywright.physics.EndstopLogic.Outcome;
import dev.gantrywright.physics.EndstopLogic.Sensor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndstopLogicTest {
  /** The whole truth table, written out by hand; a dash is a floating input. */
  @ParameterizedTest
  @CsvSource({
    "NO, PULL_UP, SWITCH, HIGH, LOW, HIGH, false",
    "NC, PULL_UP, SWITCH, LOW, HIGH, HIGH, true",
    "NO, PULL_DOWN, SWITCH, LOW, HIGH, LOW, false",
    "NC, PULL_DOWN, SWITCH, HIGH, LOW, LOW, true",
    "NO, DRIVEN, SWITCH, HIGH, LOW, -, false",
    "NC, DRIVEN, SWITCH, LOW, HIGH, -, false",
    "NO, PULL_UP, NPN, HIGH, LOW, HIGH, false",
    "NC, PULL_UP, NPN, LOW, HIGH, HIGH, true",
    "NO, PULL_DOWN, NPN, LOW, LOW, LOW, false",
    "NC, PULL_DOWN, NPN, LOW, LOW, LOW, false",
    "NO, DRIVEN, NPN, HIGH, LOW, -, false",
    "NC, DRIVEN, NPN, LOW, HIGH, -, false",
    "NO, PULL_UP, PNP, HIGH, HIGH, HIGH, false",
    "NC, PULL_UP, PNP, HIGH, HIGH, HIGH, false",
    "NO, PULL_DOWN, PNP, LOW, HIGH, LOW, false",
    "NC, PULL_DOWN, PNP, HIGH, LOW, LOW, true",
    "NO, DRIVEN, PNP, LOW, HIGH, -, false",
    "NC, DRIVEN, PNP, HIGH, LOW, -, false",
  })
  void theTruthTable(
      Contact contact,
      Input input,
      Sensor sensor,
      Level idle,
      Level pressed,
      String broken,
      boolean detected) {
    Outcome outcome = EndstopLogic.of(contact, input, sensor);
    assertThat(outcome.idle()).isEqualTo(idle);
    assertThat(outcome.pressed()).isEqualTo(pressed);
    assertThat(outcome.broken().map(Level::name).orElse("-")).isEqualTo(broken);
    assertThat(outcome.brokenWireDetected()).isEqualTo(detected);
    assertThat(outcome.activeLow()).isEqualTo(pressed == Level.LOW);
    assertThat(outcome.tells()).isEqualTo(idle != pressed);
  }
}
