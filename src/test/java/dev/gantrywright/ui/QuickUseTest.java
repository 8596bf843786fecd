package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.theme.SheetScroll;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What keeps the window quick, and must not be seen otherwise. */
class QuickUseTest {
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
  void nothingThatScrollsIsPaintedWholeForOneLetter() throws Exception {
    for (Stage stage : Stage.values()) {
      open.run(() -> desk.stage().set(stage));
      List<Node> views =
          open.on(
              () ->
                  open.window().scene().getRoot().lookupAll(".viewport").stream()
                      .filter(view -> view.getParent() instanceof SheetScroll)
                      .toList());
      assertThat(views).as(stage.name()).isNotEmpty().noneMatch(Node::isCache);
    }
  }

  @Test
  void theCellsOfTheLogAreMadeBeforeTheFirstLineComes() throws Exception {
    open.until(() -> cells().size() >= 10 && log().getItems().isEmpty());
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> log().getParent().isVisible());
    assertThat(log().getItems()).isEqualTo(List.of());
  }

  @Test
  void whatWasTypedLastIsKeptThoughTheWindowClosesAtOnce() throws Exception {
    open.run(() -> desk.values().edit("axes.x.stepsPerMm", 81));
    open.close();
    open = null;
    OpenWindow again = new OpenWindow(data);
    open = again;
    assertThat(again.heron().profile().axes().get("x").stepsPerMm()).isEqualTo(81.0);
  }

  private ListView<?> log() {
    return (ListView<?>) open.window().scene().lookup("#line-log");
  }

  private Set<Node> cells() {
    return log().lookupAll(".list-cell");
  }
}
