package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the serial log and the stage share a window, and how the log is let down again. */
class LogRoomUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.run(() -> desk.link().connect(desk.profile(), new PortAddress.Practice(""), 20));
    open.until(() -> desk.link().live().get().fresh());
    open.run(() -> desk.part().set("axes.x"));
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private Node find(String id) {
    return open.window().scene().lookup(id);
  }

  private boolean seen(String id) {
    for (Node at = find(id); at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return find(id) != null;
  }

  private Bounds inWindow(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }

  /** What holds the stage scrolls; so much of it is in view, in the window's own pixels. */
  private double stage() {
    Node field = find("#edit-axes-x-motor-fullSteps");
    for (Parent at = field.getParent(); at != null; at = at.getParent()) {
      if (at.getStyleClass().contains("sheet-scroll")) {
        return inWindow(at).getHeight();
      }
    }
    throw new AssertionError("no stage");
  }

  @Test
  void atTwiceTheSizeTheLogTakesTheStagesPlaceAndEscapeGivesItBack() throws Exception {
    open.run(() -> open.window().rezoom(2));
    open.until(() -> seen("#edit-axes-x-motor-fullSteps"));
    open.run(() -> find("#edit-axes-x-motor-fullSteps").requestFocus());
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> seen("#line-log") && !seen("#edit-axes-x-motor-fullSteps"));
    open.until(() -> inWindow(find("#line-open")).getMaxY() <= 720);
    open.run(
        () -> {
          assertThat(inWindow(find("#line-log")).getHeight()).isGreaterThanOrEqualTo(3 * 20 * 2);
          assertThat(inWindow(find("#line-log")).getMinY())
              .isGreaterThanOrEqualTo(inWindow(find("#stage-prove")).getMaxY());
          assertThat(inWindow(find("#stop")).getMinY()).isGreaterThanOrEqualTo(0);
          assertThat(((Button) find("#line-open")).getText()).isEqualTo("Let down · Esc");
          assertThat(find("#line-command").isFocused()).isTrue();
        });
    open.press(KeyCode.ESCAPE);
    open.until(() -> !seen("#line-log") && seen("#edit-axes-x-motor-fullSteps"));
    open.until(() -> find("#edit-axes-x-motor-fullSteps").isFocused());
    assertThat(((Button) find("#line-open")).getText()).isEqualTo("Serial line");
  }

  /** Nothing that cannot be seen takes the keyboard. */
  @Test
  void tabWalksPastTheStageThatTheLogStandsIn() throws Exception {
    open.run(() -> open.window().rezoom(2));
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> !seen("#edit-axes-x-motor-fullSteps") && find("#line-command").isFocused());
    for (int i = 0; i < 24; i++) {
      open.press(KeyCode.TAB);
      open.run(
          () -> {
            Node owner = open.window().scene().getFocusOwner();
            for (Node at = owner; at != null; at = at.getParent()) {
              assertThat(at.isVisible()).as(owner.toString()).isTrue();
            }
          });
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.5})
  void whereThereIsRoomForBothTheStageKeepsWhatCanBeUsed(double zoom) throws Exception {
    open.run(() -> open.window().rezoom(zoom));
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> seen("#line-log") && seen("#edit-axes-x-motor-fullSteps"));
    open.until(() -> inWindow(find("#line-open")).getMaxY() <= 720);
    open.until(() -> stage() >= 120 * zoom);
    assertThat(inWindow(find("#line-log")).getHeight()).isGreaterThanOrEqualTo(3 * 20 * zoom);
    open.press(KeyCode.ESCAPE);
    open.until(() -> !seen("#line-log"));
  }

  @Test
  void aLargerWindowShowsBothAgain() throws Exception {
    open.run(() -> open.window().rezoom(2));
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> seen("#line-log") && !seen("#edit-axes-x-motor-fullSteps"));
    open.run(() -> open.window().rezoom(1));
    open.until(() -> seen("#line-log") && seen("#edit-axes-x-motor-fullSteps"));
  }

  @Test
  void twoEscapesStopTheMachineThoughTheFirstLetsTheLogDown() throws Exception {
    open.run(() -> desk.link().arm(true));
    open.until(() -> desk.link().armed().get());
    open.press(KeyCode.CONTROL, KeyCode.J);
    open.until(() -> seen("#line-log"));
    // In one go, as a hand does it: what counts as two is decided by the time between them.
    open.run(
        () -> {
          for (int i = 0; i < 2; i++) {
            find("#line-command")
                .fireEvent(
                    new javafx.scene.input.KeyEvent(
                        javafx.scene.input.KeyEvent.KEY_PRESSED,
                        "",
                        "",
                        KeyCode.ESCAPE,
                        false,
                        false,
                        false,
                        false));
          }
        });
    open.until(() -> !seen("#line-log"));
    open.until(() -> !desk.link().armed().get());
  }
}
