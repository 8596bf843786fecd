package dev.gantrywright.link.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.PracticeMachines;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PracticeBoardTest {
  private static final long SECOND = 1_000_000_000L;

  private static PracticeBoard board(String... faults) {
    List<Fault> parsed = Stream.of(faults).map(Fault::parse).toList();
    return new PracticeBoard(PracticeMachines.plover().withFaults(parsed), 7, 0);
  }

  private static List<String> endstops(PracticeBoard board, double seconds) {
    return board.obey("M119", (long) (seconds * SECOND));
  }

  @Test
  void aTouchIsReportedRightlyForEveryWiring() {
    PracticeBoard board = board();
    for (String end : List.of("xMin", "yMin", "zMin")) {
      String reported = PracticeBoard.reportedName(end);
      assertThat(endstops(board, 1)).contains(reported + " = clear");
      board.touch(end, true, 2 * SECOND);
      assertThat(endstops(board, 3)).contains(reported + " = touched");
      board.touch(end, false, 4 * SECOND);
    }
  }

  @Test
  void theHandPressesAsWritten() {
    PracticeBoard board =
        new PracticeBoard(
            PracticeMachines.plover().withPresses(List.of(new Press("yMin", 1, 2))), 7, 0);
    assertThat(endstops(board, 0.9)).contains("y_min = clear");
    assertThat(endstops(board, 1.5)).contains("y_min = touched");
    assertThat(endstops(board, 2.1)).contains("y_min = clear");
  }

  @Test
  void stuckBrokenSwappedAndShared() {
    PracticeBoard stuck = board("stuck:xMin:triggered", "stuck:yMin:open");
    stuck.touch("yMin", true, SECOND);
    assertThat(endstops(stuck, 2)).contains("x_min = touched", "y_min = clear");
    // As earlier releases had it.
    assertThat(endstops(board("stuck:xMin:touched", "stuck:yMin:free"), 2))
        .contains("x_min = touched", "y_min = clear");
    // A broken wire on a normally closed contact reads as triggered: that is why it is safer.
    assertThat(endstops(board("broken:xMin", "broken:yMin"), 2))
        .contains("x_min = touched", "y_min = clear");
    PracticeBoard swapped = board("swapped:yMin:zMin");
    swapped.touch("yMin", true, SECOND);
    assertThat(endstops(swapped, 2)).contains("y_min = clear", "z_min = touched");
    PracticeBoard shared = board("shared:yMin:zMin");
    shared.touch("yMin", true, SECOND);
    assertThat(endstops(shared, 2)).contains("y_min = touched", "z_min = touched");
  }

  @Test
  void bounceChattersForItsTimeOnly() {
    PracticeBoard board = board("bounce:yMin:50");
    board.touch("yMin", true, SECOND);
    long distinct =
        Stream.iterate(0, i -> i + 1)
            .limit(50)
            .map(i -> endstops(board, 1 + i / 1000.0).get(1))
            .distinct()
            .count();
    assertThat(distinct).isEqualTo(2);
    for (int i = 0; i < 50; i++) {
      assertThat(endstops(board, 1.051 + i / 1000.0)).contains("y_min = touched");
    }
  }

  @Test
  void storedSettingsOverrideTheBuildUntilRestored() {
    PracticeBoard board = board("stored:x.stepsPerMm:82.5");
    assertThat(board.obey("M503", 0))
        .contains("keep steps/mm: X82.5000 Y80.0000 Z400.0000 E415.2000");
    assertThat(board.obey("M502", 0)).containsExactly("done");
    assertThat(board.obey("M503", 0))
        .contains("keep steps/mm: X80.0000 Y80.0000 Z400.0000 E415.2000");
    board.obey("N3 m92 y81*55", 0);
    assertThat(board.obey("M503", 0))
        .contains("keep steps/mm: X80.0000 Y81.0000 Z400.0000 E415.2000");
  }

  @Test
  void aStopHaltsMotionAndHeat() {
    PracticeBoard board = board();
    board.obey("M104 S200", 0);
    assertThat(board.obey("M112", SECOND)).containsExactly("halted: heaters off, motors off");
    assertThat(board.obey("G28", SECOND).get(0)).startsWith("refused: halted");
    assertThat(board.obey("M105", SECOND).get(0)).contains("target 0.0 C, power 0.00");
  }

  @Test
  void theHeaterFollowsItsPlant() {
    PracticeBoard board = board();
    board.obey("POWER hotend S0.5", 0);
    // Gain 300 K, lag 60 s, dead time 2 s, half power: 20 + 150 (1 - e^-1) after 62 s.
    String at62 = board.obey("M105", 62 * SECOND).get(0);
    double celsius = Double.parseDouble(at62.replaceAll(".*= ([0-9.]+) C, target.*", "$1"));
    assertThat(celsius)
        .isBetween(20 + 150 * (1 - Math.exp(-1)) - 0.5, 20 + 150 * (1 - Math.exp(-1)) + 0.5);
  }

  @Test
  void silenceRestartsAndEcho() {
    assertThat(endstops(board("silence:1:2"), 1.5)).isEmpty();
    assertThat(endstops(board("silence:1:2"), 2.5)).isNotEmpty();
    PracticeBoard restarting = board("restarts:5");
    assertThat(endstops(restarting, 6)).containsExactly("boot practice board for Plover");
    assertThat(endstops(restarting, 6.1)).contains("done");
    assertThat(endstops(board("echo"), 1)).startsWith("M119");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "stuck",
        "stuck:xMin:maybe",
        "bounce:xMin:soon",
        "stored:x:1",
        "stored:x.jerk:1",
        "restarts:0",
        "melted:xMin"
      })
  void aFaultThatIsNoneIsRefusedInOneLine(String text) {
    assertThatThrownBy(() -> Fault.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no fault of the practice board")
        .hasMessageNotContaining("\n");
  }

  @Test
  void rubbishIsAnsweredAndHarmless() {
    PracticeBoard board = board();
    assertThat(board.obey("\uFFFD\u0007*", 0)).first().asString().startsWith("refused");
    assertThat(board.obey("M999", 0)).containsExactly("refused: M999 is not known", "done");
  }
}
