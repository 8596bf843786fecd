package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.HistoryFile;
import dev.gantrywright.ui.state.PrinterDesk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record at the end of the Prove stage: timeline, comparison, the way back, the sheet. */
class RecordUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private Path heron;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    heron = open.workshop().resolve("heron.printer.json");
    PrinterProfile delivered = ProfileStore.read(heron);
    PrinterHistory.beside(heron).noted(delivered, "as delivered");
    ProfileStore.save(ProfileValues.with(delivered, "axes.x.stepsPerMm", 80.0), heron);
    desk = open.heron();
    open.click("#stage-prove");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private boolean kept(EventKind kind) {
    try {
      return HistoryFile.beside(heron).read().last(kind).isPresent();
    } catch (IOException unreadable) {
      return false;
    }
  }

  @Test
  void goesBackToAnEarlierStateInOneStepThatCanBeUndone() throws Exception {
    open.click("#record-compare-1");
    open.click("#record-back");
    open.until(() -> desk.profile().axes().get("x").stepsPerMm() == 160);
    open.until(() -> kept(EventKind.RETURN));

    open.run(desk.values()::undo);
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
  }

  @Test
  void writesTheSheetBesideTheProfile() throws Exception {
    Path sheet = heron.resolveSibling("heron-as-built.html");
    open.click("#record-html");
    open.until(
        () ->
            ((Label) open.window().scene().lookup("#record-said"))
                .getText()
                .contains(sheet.toString()));
    assertThat(Files.readString(sheet)).contains("<h1>Heron</h1>", "as delivered");
  }

  @Test
  void aProofGoesIntoTheHistory() throws Exception {
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
    open.click("#prove-now");
    open.until(() -> kept(EventKind.PROOF));
    open.until(() -> open.window().scene().lookup("#record-compare-2") != null);
  }
}
