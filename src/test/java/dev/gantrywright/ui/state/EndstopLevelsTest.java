package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EndstopLevelsTest {
  private static Endstop endstop(
      Contact contact, SensorKind sensor, InputPull pull, Boolean inverted, Boolean pullUp) {
    return new Endstop(
        true, contact, sensor, pull, null, null, inverted, pullUp, null, null, null, null);
  }

  /** Levels follow from the circuit: a conducting contact decides, the pull decides otherwise. */
  @ParameterizedTest
  @CsvSource({
    "NO, SWITCH, PULL_UP,   HIGH, LOW",
    "NC, SWITCH, PULL_UP,   LOW,  HIGH",
    "NO, SWITCH, PULL_DOWN, LOW,  HIGH",
    "NC, SWITCH, PULL_DOWN, HIGH, LOW",
    "NO, NPN,    PULL_UP,   HIGH, LOW",
    "NC, NPN,    PULL_UP,   LOW,  HIGH",
    "NO, PNP,    PULL_DOWN, LOW,  HIGH",
    "NO, NPN,    DRIVEN,    HIGH, LOW",
    "NO, PNP,    DRIVEN,    LOW,  HIGH",
    "NO, SWITCH, NONE,      FLOATING, LOW",
    "NC, SWITCH, NONE,      LOW,  FLOATING",
  })
  void levelsFollowFromTheCircuit(
      Contact contact,
      SensorKind sensor,
      InputPull pull,
      EndstopLevels.Level rest,
      EndstopLevels.Level touched) {
    EndstopLevels levels = EndstopLevels.of(endstop(contact, sensor, pull, false, false));
    assertThat(levels.rest()).isEqualTo(rest);
    assertThat(levels.touched()).isEqualTo(touched);
  }

  @Test
  void aContactThatPullsThePinLowWhenTouchedNeedsInverting() {
    Endstop plain = endstop(Contact.NO, SensorKind.SWITCH, InputPull.PULL_UP, false, false);
    Endstop turned = endstop(Contact.NO, SensorKind.SWITCH, InputPull.PULL_UP, true, false);
    assertThat(EndstopLevels.of(plain).agrees()).isFalse();
    assertThat(EndstopLevels.of(turned).agrees()).isTrue();
  }

  @Test
  void theInternalPullUpHoldsAnInputThatNothingElseHolds() {
    Endstop endstop = endstop(Contact.NO, SensorKind.SWITCH, InputPull.NONE, true, true);
    assertThat(EndstopLevels.of(endstop).rest()).isEqualTo(EndstopLevels.Level.HIGH);
  }

  @Test
  void whatIsNotDescribedIsNotKnown() {
    Endstop endstop = endstop(null, null, InputPull.PULL_UP, true, null);
    EndstopLevels levels = EndstopLevels.of(endstop);
    assertThat(levels.rest()).isEqualTo(EndstopLevels.Level.UNKNOWN);
    assertThat(levels.agrees()).isNull();
    Endstop silent = endstop(Contact.NO, null, InputPull.PULL_UP, null, null);
    assertThat(EndstopLevels.of(silent).agrees()).isNull();
  }

  @Test
  void aFloatingInputCannotBeJudged() {
    Endstop endstop = endstop(Contact.NO, SensorKind.SWITCH, InputPull.NONE, true, false);
    assertThat(EndstopLevels.of(endstop).agrees()).isNull();
  }
}
