package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Remark;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Path;
import javafx.scene.control.ListView;
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

  private Remark remark(String path) {
    return desk.remarks().stream()
        .filter(each -> each.path().equals(path))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theMarginNoteAppliesItsRemedy() throws Exception {
    open.click("#part-endstops-zMin");
    Remark wrong = remark("endstops.zMin.inverted");
    open.click("#fix-" + wrong.slug());
    open.settle();
    assertThat(desk.profile().endstops().get("zMin").inverted()).isFalse();
    assertThat(desk.remarks()).noneMatch(each -> each.path().equals("endstops.zMin.inverted"));
    open.press(KeyCode.CONTROL, KeyCode.Z);
    assertThat(desk.profile().endstops().get("zMin").inverted()).isTrue();
  }

  @Test
  void checkListsWorstFirstAndAppliesTheOneInHand() throws Exception {
    open.click("#stage-check");
    assertThat(desk.remarks()).isNotEmpty();
    assertThat(desk.remarks()).isSortedAccordingTo((a, b) -> a.gravity().compareTo(b.gravity()));
    int before = desk.remarks().size();
    Remark steps = remark("axes.x.stepsPerMm");
    open.run(
        () -> {
          @SuppressWarnings("unchecked")
          ListView<Remark> list = (ListView<Remark>) open.window().scene().lookup("#remarks");
          list.getSelectionModel().select(steps);
        });
    open.click("#apply-" + steps.slug());
    open.settle();
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
    assertThat(desk.remarks()).hasSizeLessThan(before);
  }

  @Test
  void allSafeRemediesAreOneStepToUndo() throws Exception {
    open.run(() -> desk.stage().set(Stage.CHECK));
    long safe =
        desk.remarks().stream()
            .filter(
                each -> each.fixes().stream().anyMatch(fix -> fix.safety() == Remark.Safety.SAFE))
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
  void aWaivedRemarkStandsAsideWithItsReason() throws Exception {
    open.click("#stage-check");
    Remark first = desk.remarks().get(0);
    open.type("#waive-reason", "on purpose");
    open.click("#waive");
    open.settle();
    assertThat(desk.remarks()).noneMatch(each -> each.key().equals(first.key()));
    assertThat(desk.profile().waivers().get(first.key()).reason()).isEqualTo("on purpose");
  }
}
