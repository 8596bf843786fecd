package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.SettledAt;
import dev.gantrywright.ui.state.Stage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** See a mismatch, look at its remedy, apply it; or waive it with a reason. */
class RemedyUseTest {
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

  private MarginNote note(String path) {
    return desk.notes().stream().filter(each -> each.path().equals(path)).findFirst().orElseThrow();
  }

  @Test
  void theMarginNoteAppliesItsRemedy() throws Exception {
    open.click("#part-endstops-zMin");
    MarginNote wrong = note("endstops.zMin.inverted");
    open.click("#fix-" + wrong.slug());
    open.settle();
    assertThat(desk.profile().endstops().get("zMin").inverted()).isFalse();
    assertThat(desk.notes()).noneMatch(each -> each.path().equals("endstops.zMin.inverted"));
    open.press(KeyCode.CONTROL, KeyCode.Z);
    assertThat(desk.profile().endstops().get("zMin").inverted()).isTrue();
  }

  @Test
  void checkListsWorstFirstAndAppliesTheOneInHand() throws Exception {
    open.click("#stage-check");
    assertThat(desk.notes()).isNotEmpty();
    assertThat(desk.notes()).isSortedAccordingTo((a, b) -> a.gravity().compareTo(b.gravity()));
    int before = desk.notes().size();
    MarginNote steps = note("axes.x.stepsPerMm");
    open.run(
        () -> {
          @SuppressWarnings("unchecked")
          ListView<MarginNote> list =
              (ListView<MarginNote>) open.window().scene().lookup("#findings");
          list.getSelectionModel().select(steps);
        });
    open.click("#apply-" + steps.slug());
    open.settle();
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
    assertThat(desk.notes()).hasSizeLessThan(before);
  }

  @Test
  void allSafeRemediesAreOneStepToUndo() throws Exception {
    open.run(() -> desk.stage().set(Stage.CHECK));
    long safe =
        desk.notes().stream()
            .filter(
                each ->
                    each.fixes().stream().anyMatch(fix -> fix.safety() == MarginNote.Safety.SAFE))
            .count();
    assertThat(safe).isPositive();
    var before = desk.profile();
    open.click("#apply-safe");
    open.settle();
    assertThat(desk.profile()).isNotEqualTo(before);
    open.press(KeyCode.CONTROL, KeyCode.Z);
    assertThat(desk.profile()).isEqualTo(before);
  }

  @Test
  void aRemedyOfTheNameMapIsApplied() throws Exception {
    int line = desk.opened().get().names().entry("name").orElseThrow().line();
    open.close();
    // Somebody wrote two lines above everything: every macro of the header has moved.
    Path header = open.workshop().resolve("rookery-2.3/config/nest.h");
    byte[] old = Files.readAllBytes(header);
    byte[] added = "// one\n// two\n".getBytes(StandardCharsets.US_ASCII);
    byte[] all = Arrays.copyOf(added, added.length + old.length);
    System.arraycopy(old, 0, all, added.length, old.length);
    Files.write(header, all);
    open = new OpenWindow(data);
    desk = open.heron();
    MarginNote moved = note("build.names");
    assertThat(moved.fixes()).hasSize(1);
    open.click("#part-build");
    open.click("#fix-" + moved.slug());
    open.until(() -> desk.notes().stream().noneMatch(each -> each.slug().equals(moved.slug())));
    assertThat(desk.opened().get().names().entry("name").orElseThrow().line()).isEqualTo(line + 2);
    open.press(KeyCode.CONTROL, KeyCode.Z);
    open.until(() -> desk.notes().stream().anyMatch(each -> each.slug().equals(moved.slug())));
    assertThat(desk.opened().get().names().entry("name").orElseThrow().line()).isEqualTo(line);
  }

  @Test
  void findingsAreFilteredByStageFamilyAndLevel() throws Exception {
    open.click("#stage-check");
    int all = listed().size();
    choose("#check-stage", Stage.DESCRIBE.title());
    assertThat(listed())
        .isNotEmpty()
        .allMatch(each -> SettledAt.of(each) == Stage.DESCRIBE)
        .hasSizeLessThanOrEqualTo(all);
    String family = listed().get(0).family();
    choose("#check-family", family);
    assertThat(listed()).isNotEmpty().allMatch(each -> each.family().equals(family));
    String gravest = listed().get(0).gravity().word();
    open.run(
        () ->
            open.window().scene().getRoot().lookupAll(".toggle-button").stream()
                .map(ToggleButton.class::cast)
                .filter(button -> button.getText().equals(gravest + "s"))
                .forEach(ToggleButton::fire));
    assertThat(listed()).noneMatch(each -> each.gravity().word().equals(gravest));
  }

  @SuppressWarnings("unchecked")
  private List<MarginNote> listed() throws Exception {
    return open.on(
        () ->
            List.copyOf(
                ((ListView<MarginNote>) open.window().scene().lookup("#findings")).getItems()));
  }

  @SuppressWarnings("unchecked")
  private void choose(String filter, String words) throws Exception {
    open.run(() -> ((ComboBox<String>) open.window().scene().lookup(filter)).setValue(words));
  }

  @Test
  void aWaivedNoteStandsAsideWithItsReason() throws Exception {
    open.click("#stage-check");
    MarginNote first = desk.notes().get(0);
    open.type("#waive-reason", "on purpose");
    open.click("#waive");
    open.settle();
    assertThat(desk.notes()).noneMatch(each -> each.key().equals(first.key()));
    assertThat(desk.profile().waivers().get(first.key()).reason()).isEqualTo("on purpose");
  }

  /** The pages begin with their reason: without the note's own place nobody knows what of. */
  @Test
  void theRulesPageSaysWhatItSpeaksOf() throws Exception {
    var note = open.on(() -> desk.notes().get(0));
    open.run(() -> desk.page().set(java.util.Optional.of(note)));
    open.until(() -> open.window().page().shown());
    var title = (javafx.scene.control.Label) open.find("#rule-page .section").orElseThrow();
    assertThat(title.getText()).isEqualTo(note.place() + " · " + note.id());
  }
}
