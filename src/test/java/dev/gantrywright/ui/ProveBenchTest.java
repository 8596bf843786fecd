package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.Endstops;
import dev.gantrywright.ui.state.Live;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Touch test, stored settings and steps/mm at the practice board, and the stop from any stage. */
class ProveBenchTest {
  private static final long HELD_NANOS = 500_000_000L;

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;
  private final Map<String, Boolean> atRest = new HashMap<>();
  private long seen;

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

  private String words(String selector) throws Exception {
    return open.find(selector).map(node -> ((Label) node).getText()).orElse("");
  }

  private boolean kept(EventKind kind) {
    try {
      return PrinterHistory.beside(desk.printer().file()).timeline().events().stream()
          .anyMatch(event -> event.kind().equals(kind.word()));
    } catch (java.io.IOException notYet) {
      return false;
    }
  }

  @Test
  void theTouchTestAsksForEachEndstopAndIsKept() throws Exception {
    List<String> pressed = new ArrayList<>();
    open.run(() -> desk.link().live().listen(live -> hand(live, pressed)));
    open.click("#touch-begin");
    open.until(() -> open.window().scene().lookup("#touch-result-xMin") != null);
    assertThat(pressed).isEqualTo(List.copyOf(Endstops.fitted(desk.profile())));
    assertThat(words("#touch-result-xMin")).contains("works");
    assertThat(words("#touch-result-zMin")).contains("inverted");
    open.click("#touch-fix-zMin");
    assertThat(desk.profile().endstops().get("zMin").inverted()).isFalse();
    open.until(() -> kept(EventKind.TOUCH_TEST));
    var facts =
        dev.gantrywright.app.record.PrinterHistory.beside(desk.printer().file())
            .timeline()
            .last(EventKind.TOUCH_TEST)
            .orElseThrow()
            .facts();
    assertThat(facts.path("practice").asBoolean(false)).as("it was no machine").isTrue();
  }

  /**
   * Presses what is asked for, and lets go when that is seen. It acts with the readings, as a hand
   * does: the touch test has a hand's patience, which a test on a busy machine may exceed. A press
   * as short as the time between two readings would be a bounce.
   */
  private void hand(Live live, List<String> pressed) {
    for (String end : Endstops.fitted(desk.profile())) {
      boolean triggered = live.of(end) == ContactState.TRIGGERED;
      if (asks(end) && atRest.containsKey(end) && !pressed.contains(end)) {
        pressed.add(end);
        desk.link().touch(end, true);
      } else if (desk.link().touched().get().contains(end) && triggered != atRest.get(end)) {
        seen = seen == 0 ? System.nanoTime() : seen;
        if (System.nanoTime() - seen > HELD_NANOS) {
          desk.link().touch(end, false);
          seen = 0;
        }
      } else {
        atRest.put(end, triggered);
      }
    }
  }

  private boolean asks(String end) {
    Label prompt = (Label) open.window().scene().lookup("#touch-prompt");
    return prompt != null
        && prompt.getText().contains(dev.gantrywright.ui.state.PlaceNames.endstop(end));
  }

  @Test
  void storedSettingsAreSentOnlyOnAnArmedLineWhichIsDisarmedAgain() throws Exception {
    double built = desk.profile().axes().get("x").stepsPerMm();
    open.run(() -> desk.values().edit("axes.x.stepsPerMm", built + 1));
    open.click("#prove-now");
    open.until(() -> desk.link().proof().get().isPresent());
    List<String> lines = desk.link().proof().get().orElseThrow().linesToSend();
    assertThat(lines).isNotEmpty();
    assertThat(open.find("#stored-send").orElseThrow().isDisabled()).isTrue();
    open.click("#stored-arm");
    open.until(() -> desk.link().armed().get());
    open.click("#stored-send");
    open.until(() -> !desk.link().armed().get());
    open.until(
        () ->
            desk.link().proof().get().map(report -> report.linesToSend().isEmpty()).orElse(false));
  }

  @Test
  void measuredTravelsGiveNewStepsThatCanBeUndone() throws Exception {
    double before = desk.profile().axes().get("x").stepsPerMm();
    for (String mm : List.of("98.6", "98,62", "98.58 mm")) {
      open.type("#travel-measured", mm);
      open.click("#travel-add");
    }
    open.until(() -> open.window().scene().lookup("#travel-run-3") != null);
    assertThat(words("#travel-value")).contains("\u00b1");
    open.click("#travel-run-3");
    open.until(() -> open.window().scene().lookup("#travel-run-3") == null);
    open.click("#travel-take");
    assertThat(desk.profile().axes().get("x").stepsPerMm())
        .isCloseTo(before * 100 / 98.61, org.assertj.core.api.Assertions.within(1e-3));
    open.until(() -> kept(EventKind.CALIBRATION));
    open.run(() -> desk.values().undo());
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(before);
  }

  @Test
  void theStopKeyWorksFromEveryStage() throws Exception {
    for (Stage stage : Stage.values()) {
      open.run(() -> desk.stage().set(stage));
      open.run(() -> desk.link().said().set(""));
      open.pressTwice(KeyCode.ESCAPE);
      open.until(() -> desk.link().said().get().startsWith("The machine confirmed the stop"));
    }
  }
}
