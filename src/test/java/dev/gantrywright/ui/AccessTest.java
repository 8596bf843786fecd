package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.theme.Mode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Walks the scene graph of every stage: names, contrast, focus order, twofold size. */
class AccessTest {
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

  private interface Look {
    void at(String where);
  }

  /** Every stage, and in Describe every part. */
  private void everywhere(Look look) throws Exception {
    for (Stage stage : Stage.values()) {
      open.run(() -> desk.stage().set(stage));
      if (stage == Stage.DESCRIBE) {
        for (var part : desk.parts()) {
          open.run(() -> desk.part().set(part.id()));
          see(look, part.title());
        }
      } else {
        see(look, stage.title());
      }
    }
  }

  /** In one go: what the machine or its ports say may come in between two turns, not yet toned. */
  private void see(Look look, String where) throws Exception {
    open.run(
        () -> {
          frames();
          look.at(where);
        });
  }

  private void layout() throws Exception {
    open.run(this::frames);
  }

  /** Twice, as two frames do: what a layout puts down is toned by the next. */
  private void frames() {
    for (int frame = 0; frame < 2; frame++) {
      open.window().scene().getRoot().applyCss();
      open.window().scene().getRoot().layout();
    }
  }

  private static List<Node> shown(Node root) {
    List<Node> nodes = new ArrayList<>();
    if (root.isVisible()) {
      nodes.add(root);
      if (root instanceof Parent parent) {
        parent.getChildrenUnmodifiable().forEach(child -> nodes.addAll(shown(child)));
      }
    }
    return nodes;
  }

  private static String name(Node node) {
    if (node.getAccessibleText() != null && !node.getAccessibleText().isBlank()) {
      return node.getAccessibleText();
    }
    return node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
  }

  @Test
  void everythingThatTakesTheKeyboardHasANameAndARole() throws Exception {
    Set<String> nameless = new LinkedHashSet<>();
    everywhere(
        where -> {
          for (Node node : shown(open.window().scene().getRoot())) {
            boolean reachable = node.isFocusTraversable() && !node.isDisabled();
            if (reachable && (name(node).isBlank() || node.getAccessibleRole() == null)) {
              nameless.add(where + ": " + node);
            }
          }
        });
    assertThat(nameless).isEmpty();
  }

  private static double luminance(Color c) {
    return 0.2126 * channel(c.getRed())
        + 0.7152 * channel(c.getGreen())
        + 0.0722 * channel(c.getBlue());
  }

  private static double channel(double c) {
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** What a node stands on: the nearest opaque fill behind it. */
  private static Color ground(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at instanceof Region region && region.getBackground() != null) {
        List<BackgroundFill> fills = region.getBackground().getFills();
        for (int i = fills.size() - 1; i >= 0; i--) {
          if (fills.get(i).getFill() instanceof Color color && color.getOpacity() > 0.99) {
            return color;
          }
        }
      }
    }
    return Color.WHITE;
  }

  /** WCAG 2.2, 1.4.3: 4.5:1 for text; what is switched off is exempt. */
  @ParameterizedTest
  @EnumSource(Mode.class)
  void textStandsOutFromItsGround(Mode mode) throws Exception {
    open.run(() -> open.window().retheme(mode));
    Set<String> faint = new LinkedHashSet<>();
    everywhere(
        where -> {
          for (Node node : shown(open.window().scene().getRoot())) {
            Color ink = null;
            if (node instanceof Labeled labeled
                && labeled.getTextFill() instanceof Color color
                && labeled.getText() != null
                && !labeled.getText().isBlank()) {
              ink = color;
            } else if (node instanceof Text text
                && text.getStyleClass().contains("draw-text")
                && !text.getStyleClass().contains("station-count")
                && text.getFill() instanceof Color color) {
              ink = color;
            }
            if (ink != null && !node.isDisabled() && contrast(ink, ground(node)) < 4.5) {
              faint.add(where + ": " + node + " " + ink + " on " + ground(node));
            }
          }
        });
    assertThat(faint).isEmpty();
  }

  @Test
  void theTabKeyWalksTheFormFromTopToBottom() throws Exception {
    open.run(() -> desk.part().set("axes.x"));
    layout();
    open.run(() -> open.window().scene().lookup("#edit-axes-x-motor-fullSteps").requestFocus());
    double last = -1;
    for (int i = 0; i < 8; i++) {
      double y =
          open.on(
              () -> {
                Node owner = open.window().scene().getFocusOwner();
                Bounds at = owner.localToScene(owner.getLayoutBounds());
                return at.getMinY();
              });
      assertThat(y).as("step " + i).isGreaterThan(last);
      last = y;
      open.press(KeyCode.TAB);
      layout();
    }
  }

  @Test
  void focusIsVisible() throws Exception {
    open.run(() -> desk.part().set("axes.x"));
    layout();
    Region box = (Region) open.find("#field-axes-x-maxSpeed").orElseThrow();
    Color before = (Color) box.getBorder().getStrokes().get(0).getTopStroke();
    open.run(() -> open.window().scene().lookup("#edit-axes-x-maxSpeed").requestFocus());
    layout();
    Color now = (Color) box.getBorder().getStrokes().get(0).getTopStroke();
    assertThat(now).isNotEqualTo(before);
    assertThat(contrast(now, ground(box.getParent()))).isGreaterThan(3);
  }

  @Test
  void atTwiceTheSizeTheNamesOfTheStationsAreWhole() throws Exception {
    open.run(() -> open.window().rezoom(2));
    for (Stage stage : Stage.values()) {
      open.run(() -> desk.stage().set(stage));
      layout();
      List<String> drawn =
          open.on(
              () ->
                  shown(open.window().scene().getRoot()).stream()
                      .filter(node -> node.getStyleClass().contains("station-name"))
                      .map(node -> ((Text) node.lookup(".text")).getText())
                      .toList());
      assertThat(drawn)
          .containsExactlyElementsOf(
              java.util.Arrays.stream(Stage.values()).map(Stage::title).toList());
    }
  }

  @Test
  void atTwiceTheSizeEveryStageStillFitsTheWindow() throws Exception {
    open.run(() -> open.window().rezoom(2));
    Set<String> outside = new LinkedHashSet<>();
    everywhere(
        where -> {
          for (String id : new String[] {"#stage-describe", "#stage-prove", "#line-open"}) {
            Node node = open.window().scene().lookup(id);
            Bounds at = node.localToScene(node.getLayoutBounds());
            if (at.getMinX() < -1
                || at.getMaxX() > open.window().scene().getWidth() + 1
                || at.getMaxY() > open.window().scene().getHeight() + 1) {
              outside.add(where + ": " + id + " " + at);
            }
          }
        });
    assertThat(outside).isEmpty();
  }
}
