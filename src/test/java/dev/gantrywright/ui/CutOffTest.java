package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Walks the scene graph of every stage and part in several sizes of window and type: no control
 * stands out of what holds it, and no words are cut short.
 */
class CutOffTest {
  /** Half a pixel of rounding on either side, at twice the size. */
  private static final double SLACK = 2;

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.run(() -> desk.link().connect(desk.profile(), new PortAddress.Practice(""), 20));
    open.until(() -> desk.link().live().get().fresh());
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  @ParameterizedTest
  @CsvSource({"1280, 720, 1", "1280, 720, 2", "1920, 1080, 1", "1920, 1080, 2"})
  void nothingIsCutOff(int width, int height, double zoom) throws Exception {
    open.run(
        () -> {
          var window = open.window().scene().getWindow();
          window.setWidth(width);
          window.setHeight(height);
          open.window().rezoom(zoom);
        });
    open.until(() -> open.window().scene().getWidth() == width);
    Set<String> cut = new LinkedHashSet<>();
    for (Stage stage : Stage.values()) {
      open.run(() -> desk.stage().set(stage));
      if (stage == Stage.DESCRIBE) {
        for (var part : desk.parts()) {
          open.run(() -> desk.part().set(part.id()));
          look(part.title(), cut);
        }
      } else {
        look(stage.title(), cut);
      }
    }
    open.run(() -> open.window().showStart());
    open.until(() -> open.window().scene().lookup("#start-search") != null);
    look("Printers", cut);
    open.until(() -> boxes().size() > 1);
    open.run(() -> boxes().subList(0, 2).forEach(CheckBox::fire));
    open.run(() -> ((Button) open.window().scene().lookup("#start-compare")).fire());
    open.until(() -> open.window().scene().lookup(".comparison") != null);
    look("Comparison", cut);
    assertThat(cut).isEmpty();
  }

  private List<CheckBox> boxes() {
    return open.window().scene().getRoot().lookupAll(".printer-row .check-box").stream()
        .map(CheckBox.class::cast)
        .toList();
  }

  /** The rows of a list are left out of the walk above; these hold what must be read whole. */
  @ParameterizedTest
  @CsvSource({"1280, 720, 1", "1280, 720, 2", "1920, 1080, 1", "1920, 1080, 2"})
  void everyFindingIsReadWhole(int width, int height, double zoom) throws Exception {
    open.run(
        () -> {
          var window = open.window().scene().getWindow();
          window.setWidth(width);
          window.setHeight(height);
          open.window().rezoom(zoom);
          desk.stage().set(Stage.CHECK);
        });
    open.until(() -> open.window().scene().getWidth() == width);
    Set<String> cut = new LinkedHashSet<>();
    Set<String> read = new LinkedHashSet<>();
    for (int i = 0; i < desk.notes().size(); i++) {
      int at = i;
      open.run(
          () -> {
            ListView<?> list = (ListView<?>) open.window().scene().lookup("#findings");
            list.scrollTo(at);
            layout();
            for (Node cell : list.lookupAll(".note-cell")) {
              if (cell instanceof ListCell<?> shown && !shown.isEmpty() && shown.isVisible()) {
                whole(shown, read, cut);
              }
            }
          });
    }
    assertThat(cut).isEmpty();
    desk.notes().forEach(note -> assertThat(read).contains(note.text()));
  }

  private static void whole(ListCell<?> cell, Set<String> read, Set<String> cut) {
    Bounds room = cell.localToScene(cell.getLayoutBounds());
    for (Node each : cell.lookupAll(".label")) {
      Labeled label = (Labeled) each;
      shortened(label, "list", cut);
      Bounds at = label.localToScene(label.getLayoutBounds());
      if (at.getMaxY() > room.getMaxY() + SLACK || at.getMaxX() > room.getMaxX() + SLACK) {
        cut.add(named(label) + " stands out of its row");
      }
      read.add(label.getText());
    }
  }

  /** A name that no header has room for gives way to Stop and the tools. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2})
  void theStopButtonStandsWholeBesideTheLongestName(double zoom) throws Exception {
    open.run(
        () -> {
          open.window().rezoom(zoom);
          desk.values().edit("name", "The second machine of the workshop by the window ".repeat(3));
        });
    open.settle();
    open.run(
        () -> {
          layout();
          Node stop = open.window().scene().lookup("#stop");
          Bounds at = stop.localToScene(stop.getLayoutBounds());
          assertThat(at.getMaxX()).isLessThanOrEqualTo(open.window().scene().getWidth());
          assertThat(((Text) stop.lookup(".text")).getText()).isEqualTo("Stop · Esc Esc");
        });
  }

  /** What the walk looks for is found where it is. */
  @Test
  void aButtonThatStandsOutOfItsRowIsFound() throws Exception {
    open.run(() -> desk.stage().set(Stage.PROVE));
    Set<String> cut = new LinkedHashSet<>();
    look("", cut);
    assertThat(cut).isEmpty();
    open.run(
        () -> {
          Region touch = (Region) open.window().scene().lookup("#touch-xMin");
          touch.setMinWidth(2000);
        });
    look("", cut);
    assertThat(cut).anyMatch(found -> found.contains("touch-xMin"));
  }

  private void look(String where, Set<String> cut) throws Exception {
    open.run(
        () -> {
          // In one go: the live line says something else with every frame.
          layout();
          walk(open.window().scene().getRoot(), where, cut);
        });
  }

  private void layout() {
    // As frames do: what a layout puts down is toned, and what that moves is laid out, next.
    for (int frame = 0; frame < 3; frame++) {
      open.window().scene().getRoot().applyCss();
      open.window().scene().getRoot().layout();
    }
  }

  private static void walk(Node node, String where, Set<String> cut) {
    boolean folded = node.getStyleClass().contains("note-folded");
    if (!node.isVisible() || node instanceof ListView || folded) {
      // The rows of a list are as wide as the list, whatever stands in them; a folded note is one
      // line of its first words.
      return;
    }
    boolean picture =
        node instanceof Region && node.getAccessibleRole() == AccessibleRole.IMAGE_VIEW;
    if (node instanceof Labeled || node instanceof TextInputControl || picture) {
      standsOut(node, where, cut);
    }
    if (node instanceof Labeled labeled && !(node instanceof ListCell)) {
      shortened(labeled, where, cut);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> walk(child, where, cut));
    }
  }

  private static void standsOut(Node control, String where, Set<String> cut) {
    Bounds at = control.localToScene(control.getLayoutBounds());
    for (Parent up = control.getParent(); up != null; up = up.getParent()) {
      if (up instanceof Region region && region.isManaged()) {
        Bounds room = region.localToScene(region.getLayoutBounds());
        if (at.getMinX() < room.getMinX() - SLACK || at.getMaxX() > room.getMaxX() + SLACK) {
          cut.add(where + ": " + named(control) + " stands out of " + named(region));
          return;
        }
      }
    }
  }

  /** Words that the toolkit itself cut short, to end in an ellipsis. */
  private static void shortened(Labeled labeled, String where, Set<String> cut) {
    Node drawn = labeled.lookup(".text");
    if (labeled.getText() != null
        && drawn instanceof Text text
        && text.getParent() == labeled
        && !text.getText().equals(labeled.getText())) {
      cut.add(where + ": " + named(labeled) + " is drawn as " + text.getText());
    }
  }

  private static String named(Node node) {
    String words = node instanceof Labeled labeled ? " \"" + labeled.getText() + "\"" : "";
    String id = node.getId() == null ? "" : " #" + node.getId();
    return node.getClass().getSimpleName() + id + node.getStyleClass() + words;
  }
}
