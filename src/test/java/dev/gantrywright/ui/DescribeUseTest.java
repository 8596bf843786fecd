package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Open a profile, edit it, see what follows, undo, save. */
class DescribeUseTest {
  private static final String STEPS = "axes.x.stepsPerMm";

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private boolean noted(String path) {
    return desk.notes().stream().map(MarginNote::path).anyMatch(path::equals);
  }

  @Test
  void theHelpOnADriverTellsWhatItsDataSheetWarnsOf() throws Exception {
    open.click("#part-axes-x");
    open.click("#edit-axes-x-driver-ic");
    open.until(() -> helpHolds("MS1 and MS2 are the UART address") && helpHolds("data sheet rev"));
  }

  private boolean helpHolds(String words) {
    return open.window().scene().getRoot().lookupAll(".help-card .label").stream()
        .anyMatch(label -> ((Labeled) label).getText().contains(words));
  }

  @Test
  void typingTheRightValueSettlesTheNoteAndUndoBringsItBack() throws Exception {
    assertThat(noted(STEPS)).isTrue();
    open.click("#part-axes-x");
    open.type("#edit-axes-x-stepsPerMm", "80");
    open.settle();
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
    assertThat(noted(STEPS)).isFalse();
    open.press(KeyCode.CONTROL, KeyCode.Z);
    open.settle();
    assertThat(noted(STEPS)).isTrue();
    assertThat(((TextField) open.find("#edit-axes-x-stepsPerMm").orElseThrow()).getText())
        .isEqualTo("160");
    open.press(KeyCode.CONTROL, KeyCode.Y);
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
  }

  @Test
  void theKeyboardReachesTheEndOfALongFormAndTheFormFollows() throws Exception {
    open.click("#part-axes-x");
    String last = "#edit-axes-x-motor-millihenries";
    open.until(() -> open.window().scene().lookup(last) != null);
    open.run(() -> open.window().scene().lookup(last).requestFocus());
    open.until(() -> inSight(last));
    open.run(() -> open.window().scene().lookup("#edit-axes-x-motor-fullSteps").requestFocus());
    open.until(() -> inSight("#edit-axes-x-motor-fullSteps") && !inSight(last));
  }

  private boolean inSight(String selector) {
    Node field = open.window().scene().lookup(selector);
    ScrollPane pane = (ScrollPane) open.window().scene().lookup(".sheet-scroll");
    Bounds seen = pane.localToScene(pane.getLayoutBounds());
    Bounds at = field.localToScene(field.getLayoutBounds());
    return at.getMinY() >= seen.getMinY() - 1 && at.getMaxY() <= seen.getMaxY() + 1;
  }

  @Test
  void unitsAreConvertedAndWhatCannotBeReadIsSaidBesideTheField() throws Exception {
    open.click("#part-axes-x");
    open.type("#edit-axes-x-homing-speed", "720 mm/min");
    assertThat(desk.profile().axes().get("x").homing().speed()).isEqualTo(12);
    open.type("#edit-axes-x-driver-current", "0,75 A");
    assertThat(desk.profile().axes().get("x").driver().current()).isEqualTo(0.75);
    open.type("#edit-axes-x-driver-current", "a lot");
    assertThat(desk.profile().axes().get("x").driver().current()).isEqualTo(0.75);
    assertThat(open.find("#field-axes-x-driver-current").orElseThrow().getPseudoClassStates())
        .anyMatch(state -> state.getPseudoClassName().equals("unread"));
  }

  @Test
  void choicesAreOneClickAndOneNameInTheHistory() throws Exception {
    open.click("#part-endstops-zMin");
    open.run(
        () -> {
          var box = open.window().scene().lookup("#field-endstops-zMin-inverted");
          ((javafx.scene.control.ToggleButton)
                  ((javafx.scene.layout.Pane) box).getChildren().get(0))
              .fire();
        });
    assertThat(desk.profile().endstops().get("zMin").inverted()).isFalse();
    assertThat(desk.values().history().get().undoLabel()).contains("z min inverted yes → no");
  }

  @Test
  void savingWritesTheFileAndSettlesTheStation() throws Exception {
    open.click("#part-axes-x");
    open.type("#edit-axes-x-stepsPerMm", "80");
    assertThat(desk.values().history().get().isSaved()).isFalse();
    open.press(KeyCode.CONTROL, KeyCode.S);
    open.until(() -> desk.values().history().get().isSaved());
    assertThat(
            ProfileStore.read(open.workshop().resolve("heron.printer.json"))
                .axes()
                .get("x")
                .stepsPerMm())
        .isEqualTo(80);
  }

  @Test
  void thePaletteLeadsToAField() throws Exception {
    open.press(KeyCode.CONTROL, KeyCode.K);
    open.type("#palette-typed", "bed power");
    open.press(KeyCode.ENTER);
    open.until(() -> desk.part().get().equals("heaters.bed"));
    open.until(
        () ->
            open.window().scene().getFocusOwner() != null
                && "edit-heaters-bed-watts".equals(open.window().scene().getFocusOwner().getId()));
  }

  /** Every part opens, and every one of its fields stands in the scene. */
  @Test
  void everyFieldOfEveryPartIsThere() throws Exception {
    for (var part : desk.parts()) {
      open.run(() -> desk.part().set(part.id()));
      for (var group : part.groups()) {
        for (var row : group.rows()) {
          assertThat(open.find("#field-" + row.path().replace('.', '-')))
              .as(row.path())
              .isPresent();
        }
      }
    }
  }
}
