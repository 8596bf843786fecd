package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.DiffRow;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line that the halves of Write cut is read whole below them. */
class WholeLineUseTest {
  private static final String COMMENT =
      " // the comment of this line is longer than either half of the list, and it is longer than"
          + " the whole window too, so that it has to wrap before anybody can read its last word: egret";

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    Path header = open.workshop().resolve("rookery-2.3/config/nest.h");
    String text = Files.readString(header, StandardCharsets.ISO_8859_1);
    String longer = text.replaceFirst("(?m)^(#define LINE_RATE .*)$", "$1" + COMMENT);
    assertThat(longer).isNotEqualTo(text);
    Files.writeString(header, longer, StandardCharsets.ISO_8859_1);
    desk = open.heron();
    open.run(() -> desk.stage().set(Stage.WRITE));
    open.until(() -> list() != null && list().getItems().stream().anyMatch(this::isRate));
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private boolean isRate(Object row) {
    return row instanceof DiffRow diff
        && diff.kind() == DiffRow.Kind.CHANGED
        && diff.path().equals("serial.baud");
  }

  private ListView<?> list() {
    return (ListView<?>) open.window().scene().lookup("#diff");
  }

  private TextArea area(String id) {
    return (TextArea) open.window().scene().lookup(id);
  }

  private boolean reads(String id) {
    return area(id) != null && area(id).isVisible() && area(id).getText().endsWith("egret");
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2})
  void theChosenLineIsReadToItsLastWord(double zoom) throws Exception {
    open.run(() -> open.window().rezoom(zoom));
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(() -> reads("#whole-line-before") && reads("#whole-line-after"));
    DiffRow row = open.on(() -> (DiffRow) list().getSelectionModel().getSelectedItem());
    open.until(() -> wraps("#whole-line-before") && wraps("#whole-line-after"));
    open.run(
        () -> {
          assertThat(area("#whole-line-before").getText()).isEqualTo(row.before());
          assertThat(area("#whole-line-after").getText()).isEqualTo(row.after());
          assertThat(area("#whole-line-after").getAccessibleText())
              .isEqualTo("Line " + row.line() + " of config/nest.h as it will stand");
          assertThat(((Label) open.window().scene().lookup("#whole-line-cause")).getText())
              .isEqualTo(row.cause());
        });
  }

  /** Laid out over more than one line, none of it out of sight. */
  private boolean wraps(String id) {
    ScrollPane pane = (ScrollPane) area(id).lookup(".scroll-pane");
    if (pane == null || pane.getViewportBounds().getHeight() <= 0) {
      return false;
    }
    double high = pane.getContent().getLayoutBounds().getHeight();
    double wide = pane.getContent().getLayoutBounds().getWidth();
    return high > 30
        && high <= pane.getViewportBounds().getHeight() + 0.5
        && wide <= pane.getViewportBounds().getWidth() + 0.5;
  }

  @Test
  void tabLeadsFromTheListToItAndItsWordsCanBeMarked() throws Exception {
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(() -> reads("#whole-line-before"));
    open.run(() -> list().requestFocus());
    open.press(KeyCode.TAB);
    open.until(() -> area("#whole-line-before").isFocused());
    open.press(KeyCode.CONTROL, KeyCode.A);
    open.until(() -> area("#whole-line-before").getSelectedText().endsWith("egret"));
    open.press(KeyCode.TAB);
    open.until(() -> area("#whole-line-after").isFocused());
    assertThat(area("#whole-line-after").isEditable()).isFalse();
  }

  /** Without a margin the reasons stand in rows between the lines: what was chosen moves down. */
  @Test
  void theChosenLineStaysTheSameWhereTheReasonsTakeRowsOfTheirOwn() throws Exception {
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(() -> reads("#whole-line-after"));
    int before = open.on(() -> list().getSelectionModel().getSelectedIndex());
    open.run(() -> open.window().rezoom(2));
    open.until(() -> list().getSelectionModel().getSelectedIndex() > before);
    open.until(() -> isRate(list().getSelectionModel().getSelectedItem()));
    open.until(() -> reads("#whole-line-after"));
    open.run(() -> open.window().rezoom(1));
    open.until(() -> list().getSelectionModel().getSelectedIndex() == before);
    open.until(() -> reads("#whole-line-after"));
  }

  @Test
  void itFollowsWhatIsTypedAndRestsWhereNothingIsToBeRead() throws Exception {
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(() -> reads("#whole-line-after"));
    open.run(() -> desk.values().edit("serial.baud", 57600));
    open.until(() -> area("#whole-line-after").getText().contains("57600 "));
    open.run(() -> list().getSelectionModel().clearAndSelect(0));
    open.until(() -> area("#whole-line-after") == null);
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(() -> reads("#whole-line-after"));
    open.click("#write-settings");
    open.until(() -> !open.window().scene().lookup("#whole-line").isVisible());
  }
}
