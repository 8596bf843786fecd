package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.practice.EndstopInput;
import dev.gantrywright.link.practice.EndstopInput.Level;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.physics.EndstopLogic;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PracticeMachineTest {
  @Test
  void isWiredAndBuiltAsTheProfileSays() {
    PracticeSetup setup = PracticeMachine.of(Printers.dunlin());
    assertThat(setup.endstops())
        .containsExactly(
            new EndstopInput(
                "xMin",
                EndstopInput.Contact.NC,
                EndstopInput.Pull.UP,
                EndstopInput.Sensor.SWITCH,
                false),
            new EndstopInput(
                "zMin",
                EndstopInput.Contact.NO,
                EndstopInput.Pull.UP,
                EndstopInput.Sensor.NPN,
                true));
    assertThat(setup.built()).hasSize(2);
    assertThat(setup.built().get(0).current()).isEqualTo(0.8);
    assertThat(setup.heaters()).hasSize(2);
    assertThat(new PracticeBoard(setup, 1, 0).obey("M119", 0))
        .containsExactly("x_min = clear", "z_min = clear", "done");
  }

  @Test
  void theFirmwareMayDifferFromTheMachine() {
    PracticeSetup setup =
        PracticeMachine.of(
            Printers.dunlin(),
            Map.of(
                "endstops.zMin.inverted", "false",
                "axes.x.stepsPerMm", "81.5",
                "identity", "rookery 2.3\nfor Dunlin"));
    PracticeBoard board = new PracticeBoard(setup, 1, 0);
    assertThat(board.obey("M119", 0)).contains("z_min = touched");
    assertThat(board.obey("M503", 0)).contains("keep steps/mm: X81.5000 Z400.0000");
    assertThat(board.obey("M115", 0)).containsExactly("rookery 2.3", "for Dunlin", "done");
  }

  @Test
  void anInputWithNothingToHoldItFloatsUnlessTheFirmwarePullsIt() {
    PrinterProfile floating = Printers.with(Printers.dunlin(), "endstops.zMin.input", "none");
    assertThat(PracticeMachine.of(floating).endstops().get(1).pull())
        .isEqualTo(EndstopInput.Pull.NONE);
    PrinterProfile pulled = Printers.with(floating, "endstops.zMin.pullUp", true);
    assertThat(PracticeMachine.of(pulled).endstops().get(1).pull()).isEqualTo(EndstopInput.Pull.UP);
  }

  @Test
  void valuesThatAreNoneAreRefused() {
    assertThatThrownBy(
            () -> PracticeMachine.of(Printers.dunlin(), Map.of("endstops.xMin.inverted", "maybe")))
        .hasMessage("endstops.xMin.inverted is 'maybe'; true or false is wanted");
    assertThatThrownBy(
            () -> PracticeMachine.of(Printers.dunlin(), Map.of("axes.x.stepsPerMm", "eighty")))
        .hasMessageContaining("a number is wanted");
  }

  /** The practice board and the calculator must tell the user the same about every wiring. */
  @Test
  void agreesWithTheCalculatorForEveryWiring() {
    int compared = 0;
    for (EndstopLogic.Contact contact : EndstopLogic.Contact.values()) {
      for (EndstopLogic.Input input : EndstopLogic.Input.values()) {
        for (EndstopLogic.Sensor sensor : EndstopLogic.Sensor.values()) {
          EndstopLogic.Outcome outcome = EndstopLogic.of(contact, input, sensor);
          EndstopInput wired =
              new EndstopInput(
                  "xMin",
                  EndstopInput.Contact.valueOf(contact.name()),
                  EndstopInput.Pull.valueOf(input.name().replace("PULL_", "")),
                  EndstopInput.Sensor.valueOf(sensor.name()),
                  false);
          assertThat(wired.level(false))
              .as("%s", wired)
              .isEqualTo(Level.valueOf(outcome.idle().name()));
          assertThat(wired.level(true))
              .as("%s", wired)
              .isEqualTo(Level.valueOf(outcome.pressed().name()));
          assertThat(wired.open())
              .isEqualTo(outcome.broken().map(l -> Level.valueOf(l.name())).orElse(Level.FLOATING));
          compared++;
        }
      }
    }
    assertThat(compared).isEqualTo(18);
  }
}
