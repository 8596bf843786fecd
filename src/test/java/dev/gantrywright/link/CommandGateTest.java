package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.CommandGate.Verdict;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandGateTest {
  private final CommandGate gate = new CommandGate(CommandTable.standard(), DialectFile.standard());

  @ParameterizedTest
  @CsvSource({
    "M119, READING",
    "m119, READING",
    "  M119  , READING",
    "M119 ; G28, READING",
    "N7 M119*45, READING",
    "M119 (all), READING",
    "M112, STOP",
    "G28, MOVING",
    "g1x10, MOVING",
    "M119 G28, MOVING",
    "M104 S200, HEATING",
    "M140S60, HEATING",
    "M500, WRITING",
    "M92 X80, WRITING",
    "M119 S1, UNKNOWN",
    "M1190, UNKNOWN",
    "M1 19, UNKNOWN",
    "hello, UNKNOWN",
    "G0028, MOVING"
  })
  void saysWhatACommandWouldDo(String command, CommandKind kind) {
    assertThat(gate.kindOf(command)).isEqualTo(kind);
  }

  @Test
  void refusesUntilArmedAndSaysWhy() {
    assertThat(gate.judge("G28"))
        .isEqualTo(
            new Verdict.Refused(
                CommandKind.MOVING,
                "'G28' moves or switches an output: arm this connection first"));
    gate.arm();
    assertThat(gate.judge("G28 ; home all")).isEqualTo(new Verdict.Pass(CommandKind.MOVING, "G28"));
    gate.disarm();
    assertThat(gate.judge("G28")).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void stopAlwaysPasses() {
    assertThat(gate.judge("m112")).isEqualTo(new Verdict.Pass(CommandKind.STOP, "M112"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"M119\nG28", "M119\rG28", "M119\0", "M119 \u00e9", ""})
  void refusesWhatIsNoSingleLineEvenWhenArmed(String command) {
    gate.arm();
    assertThat(gate.judge(command)).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void aProfileMayAskItsOwnQuestion() {
    CommandGate own =
        new CommandGate(
            CommandTable.standard(), DialectFile.with(Map.of("endstopQuery", "endstops ?")));
    assertThat(own.judge("ENDSTOPS  ?"))
        .isEqualTo(new Verdict.Pass(CommandKind.READING, "endstops ?"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"G28", "M119 G28", "m104 s200", "M500", "M119\nG28"})
  void aProfileCannotPassOffADangerousCommandAsAQuestion(String query) {
    Dialect dialect = DialectFile.with(Map.of("endstopQuery", query));
    assertThatThrownBy(() -> new CommandGate(CommandTable.standard(), dialect))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("link.endstopQuery");
  }

  @Test
  void norAsTheStop() {
    Dialect dialect = DialectFile.with(Map.of("stop", "G28"));
    assertThatThrownBy(() -> new CommandGate(CommandTable.standard(), dialect))
        .hasMessageContaining("link.stop");
  }
}
