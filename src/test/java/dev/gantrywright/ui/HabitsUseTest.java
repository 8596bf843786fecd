package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.theme.Mode;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the hands learn: palette, key map, zoom, theme, undo by name, saving. */
class HabitsUseTest {
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

  @Test
  void thePaletteFindsAFieldAndGivesItTheKeyboard() throws Exception {
    open.press(KeyCode.CONTROL, KeyCode.K);
    open.until(() -> open.window().palette().shown());
    open.type("#palette-typed", "baud");
    open.press(KeyCode.ENTER);
    open.until(() -> desk.part().get().equals("serial"));
    open.until(
        () ->
            open.window().scene().getFocusOwner() != null
                && "edit-serial-baud".equals(open.window().scene().getFocusOwner().getId()));
    assertThat(open.window().palette().shown()).isFalse();
  }

  @Test
  void thePaletteGoesAwayWithEscape() throws Exception {
    open.press(KeyCode.CONTROL, KeyCode.K);
    open.until(() -> open.window().palette().shown());
    open.press(KeyCode.ESCAPE);
    open.until(() -> !open.window().palette().shown());
  }

  @Test
  void theKeyMapShowsEveryKey() throws Exception {
    open.press(KeyCode.F1);
    open.until(() -> open.window().keys().shown());
    for (String key : new String[] {"Ctrl+K", "Ctrl+S", "Esc Esc", "Ctrl+Shift+A"}) {
      assertThat(open.window().keys().lookupAll(".label"))
          .as(key)
          .anyMatch(label -> ((javafx.scene.control.Label) label).getText().equals(key));
    }
    open.click("#keys-close");
    open.until(() -> !open.window().keys().shown());
  }

  @Test
  void aQuestionMarkOpensTheKeyMapWhereNobodyWrites() throws Exception {
    open.run(() -> open.window().scene().lookup("#stage-describe").requestFocus());
    open.run(
        () ->
            open.window()
                .scene()
                .getFocusOwner()
                .fireEvent(
                    new javafx.scene.input.KeyEvent(
                        javafx.scene.input.KeyEvent.KEY_TYPED,
                        "?",
                        "",
                        KeyCode.UNDEFINED,
                        false,
                        false,
                        false,
                        false)));
    open.until(() -> open.window().keys().shown());
  }

  @Test
  void digitsGoFromStageToStage() throws Exception {
    open.press(KeyCode.CONTROL, KeyCode.DIGIT3);
    open.until(() -> desk.stage().get() == dev.gantrywright.ui.state.Stage.WRITE);
    open.press(KeyCode.CONTROL, KeyCode.DIGIT6);
    open.until(() -> desk.stage().get() == dev.gantrywright.ui.state.Stage.PROVE);
  }

  @Test
  void zoomAndThemeAreRememberedByTheNextRun() throws Exception {
    open.press(KeyCode.CONTROL, KeyCode.EQUALS);
    open.press(KeyCode.CONTROL, KeyCode.EQUALS);
    open.press(KeyCode.CONTROL, KeyCode.T);
    open.until(() -> open.window().habits().zoom() == 1.2);
    assertThat(open.window().habits().mode()).isEqualTo(Mode.DARK);
    open.close();
    open = new OpenWindow(data);
    assertThat(open.window().habits().zoom()).isEqualTo(1.2);
    assertThat(open.window().habits().mode()).isEqualTo(Mode.DARK);
    open.press(KeyCode.CONTROL, KeyCode.DIGIT0);
    open.until(() -> open.window().habits().zoom() == 1);
  }

  @Test
  void aWindowWhoseScreenIsGoneComesBackInSight() throws Exception {
    assertThat(placeOf(90_000)).as("beyond every screen").isNaN();
    assertThat(placeOf(40)).isEqualTo(40);
  }

  private double placeOf(double x) throws Exception {
    Path elsewhere = data.resolve("remembered-" + x);
    Files.createDirectories(elsewhere);
    Files.writeString(
        elsewhere.resolve("window.json"),
        "{\"x\":" + x + ",\"y\":10,\"width\":800,\"height\":600}");
    return open.on(
        () -> {
          Stage stage = new Stage();
          new WorkbenchWindow(stage, Surroundings.in(elsewhere, open.workshop()));
          return stage.getX();
        });
  }

  @Test
  void undoAndRedoSayWhatTheyDo() throws Exception {
    open.click("#part-axes-x");
    paste("80");
    assertThat(undo("undo").getAccessibleText()).contains("X steps/mm 160 → 80");
    open.press(KeyCode.CONTROL, KeyCode.Z);
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(160);
    assertThat(undo("redo").getAccessibleText()).contains("X steps/mm 160 → 80");
    open.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
  }

  /** One edit, however slow the machine types. */
  private void paste(String text) throws Exception {
    open.run(
        () ->
            ((javafx.scene.control.TextField)
                    open.window().scene().lookup("#edit-axes-x-stepsPerMm"))
                .setText(text));
  }

  private Button undo(String which) throws Exception {
    return (Button) open.find("#head-" + which).orElseThrow();
  }

  @Test
  void savingReachesTheFileAndTheStationSaysSo() throws Exception {
    open.click("#part-axes-x");
    open.type("#edit-axes-x-stepsPerMm", "80");
    assertThat(desk.values().history().get().isSaved()).isFalse();
    open.press(KeyCode.CONTROL, KeyCode.S);
    open.until(() -> desk.values().history().get().isSaved());
    assertThat(
            dev.gantrywright.machine.ProfileStore.read(
                    open.workshop().resolve("heron.printer.json"))
                .axes()
                .get("x")
                .stepsPerMm())
        .isEqualTo(80);
  }

  @Test
  void thePrinterIsCopiedAsText() throws Exception {
    open.run(() -> CopiedText.profile(desk));
    String text = open.on(() -> Clipboard.getSystemClipboard().getString());
    assertThat(text).contains("Heron").contains("X steps/mm");
  }

  /** The log that is pulled up takes of a larger window, and the stage keeps what it needs. */
  @Test
  void theSerialLogGrowsWithTheWindow() throws Exception {
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> logHeight() > 0 && logHeight() < 250);
    double small = open.on(this::logHeight);
    open.run(
        () -> {
          open.window().scene().getWindow().setWidth(1920);
          open.window().scene().getWindow().setHeight(1080);
        });
    open.until(() -> logHeight() >= small + 120);
    open.run(() -> open.window().scene().getWindow().setHeight(720));
    open.until(() -> logHeight() <= small + 1);
  }

  private double logHeight() {
    Node log = open.window().scene().lookup("#line-log");
    return log == null ? 0 : log.getLayoutBounds().getHeight();
  }
}
