package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Make the practice board wrong in the window, see it, mend it. */
class FaultsUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.click("#stage-prove");
    assertThat(open.find("#fault-add").orElseThrow().getParent().getParent().isVisible()).isFalse();
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private void choose(String selector, int row) throws Exception {
    open.run(
        () ->
            ((ComboBox<?>) open.window().scene().lookup(selector)).getSelectionModel().select(row));
  }

  @Test
  void aSwitchThatIsStuckReadsSoUntilItIsMended() throws Exception {
    choose("#fault-kind", 1);
    open.click("#fault-add");
    open.until(() -> desk.link().live().get().of("xMin") == ContactState.TRIGGERED);
    Labeled chip = (Labeled) open.find("#fault-0").orElseThrow();
    assertThat(chip.getText()).isEqualTo("Mend: x min stuck triggered");
    open.click("#disconnect");
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().of("xMin") == ContactState.TRIGGERED);
    open.click("#fault-0");
    open.until(() -> desk.link().live().get().of("xMin") == ContactState.OPEN);
    assertThat(desk.link().faults().chosen().get()).isEmpty();
  }

  @Test
  void aStoredSettingThatDiffersFailsTheProofAndItsRemovalPutsItBack() throws Exception {
    choose("#fault-kind", 7);
    open.click("#fault-add");
    assertThat(desk.link().faults().chosen().get()).as("a number is wanted").isEmpty();
    open.type("#fault-number", "82,5");
    open.click("#fault-add");
    assertThat(desk.link().faults().chosen().get())
        .containsExactly(Fault.parse("stored:x.stepsPerMm:82.5"));
    assertThat(verdict()).isEqualTo("82.5");
    open.click("#fault-0");
    assertThat(verdict()).isNotEqualTo("82.5");
  }

  /** What a proof sees of X's steps/mm. */
  private String verdict() throws Exception {
    open.run(() -> desk.link().proof().set(java.util.Optional.empty()));
    open.click("#prove-now");
    open.until(() -> desk.link().proof().get().isPresent());
    return desk.link().proof().get().orElseThrow().checks().stream()
        .filter(check -> check.path().equals("axes.x.stepsPerMm"))
        .findFirst()
        .orElseThrow()
        .seen();
  }

  @Test
  void aSilenceLosesTheLine() throws Exception {
    choose("#fault-kind", 9);
    open.type("#fault-number", "3600");
    open.click("#fault-add");
    open.until(() -> !desk.link().live().get().fresh());
    open.until(() -> desk.link().status().get().kind() != LinkStatus.Kind.UP);
  }
}
