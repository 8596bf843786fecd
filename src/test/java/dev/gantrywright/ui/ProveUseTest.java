package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.Expectation;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Watch live endstops on the practice board, see one disagree, mend it, prove. */
class ProveUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.click("#stage-prove");
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  @Test
  void theEndstopThatIsWrongDisagreesUntilItIsMended() throws Exception {
    open.until(() -> Expectation.disagreeing(desk.profile(), desk.link()).contains("zMin"));
    open.click("#fix-endstop-zMin");
    assertThat(desk.profile().endstops().get("zMin").inverted()).isFalse();
    open.click("#practice-rebuild");
    open.until(
        () ->
            desk.link().live().get().fresh()
                && Expectation.disagreeing(desk.profile(), desk.link()).isEmpty());
    open.click("#prove-now");
    open.until(() -> desk.link().proof().get().isPresent());
    assertThat(desk.link().proof().get().orElseThrow().passed()).isTrue();
  }

  @Test
  void touchingAnEndstopShowsAtOnce() throws Exception {
    open.click("#touch-xMin");
    open.until(() -> desk.link().live().get().of("xMin") == ContactState.TRIGGERED);
    assertThat(Expectation.disagreeing(desk.profile(), desk.link())).doesNotContain("xMin");
    open.click("#touch-xMin");
    open.until(() -> desk.link().live().get().of("xMin") == ContactState.OPEN);
  }

  @Test
  void theStopButtonStandsInItsCornerWhileConnected() throws Exception {
    assertThat(open.find("#stop").orElseThrow().isVisible()).isTrue();
    open.pressTwice(KeyCode.ESCAPE);
    open.until(() -> desk.link().said().get().startsWith("The machine confirmed the stop"));
    open.click("#disconnect");
    open.until(() -> desk.link().status().get().kind() == LinkStatus.Kind.NONE);
    assertThat(open.find("#stop").orElseThrow().isVisible()).isFalse();
  }
}
