package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Every key, shown by {@code ?}. */
public final class KeyMap extends VBox {
  /** In the order in which they are shown; the bundle has the keys and what they do. */
  private static final List<String> ROWS =
      List.of(
          "stages",
          "find",
          "undo",
          "redo",
          "save",
          "open",
          "printers",
          "line",
          "apply",
          "prove",
          "stop",
          "tab",
          "outline",
          "choice",
          "zoom",
          "theme",
          "log",
          "keys");

  private final Button close =
      Pieces.button("keys-close", Texts.of("keys.close"), "act-second", this::close);

  public KeyMap() {
    getStyleClass().add("float");
    setMaxSize(560, 560);
    setSpacing(10);
    GridPane grid = new GridPane();
    grid.setHgap(24);
    grid.setVgap(5);
    int row = 0;
    for (String key : ROWS) {
      grid.addRow(
          row++,
          Pieces.label(Texts.of("keys." + key), "strong"),
          Pieces.label(Texts.of("keys." + key + ".does")));
    }
    getChildren().addAll(Pieces.label(Texts.of("keys.title"), "section"), grid, close);
    setVisible(false);
    setManaged(false);
  }

  public void open() {
    setVisible(true);
    setManaged(true);
    close.requestFocus();
  }

  public boolean shown() {
    return isVisible();
  }

  public void close() {
    setVisible(false);
    setManaged(false);
  }
}
