package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
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
          "hold",
          "mark",
          "trace",
          "moments",
          "tab",
          "outline",
          "choice",
          "zoom",
          "theme",
          "log",
          "escape",
          "keys");

  private Button close;

  public KeyMap() {
    getStyleClass().add("float");
    setMaxSize(660, USE_PREF_SIZE);
    setSpacing(10);
    setVisible(false);
    setManaged(false);
  }

  /** Made when it is first asked for: a window that opens has other things to do. */
  private void make() {
    close = Pieces.button("keys-close", Texts.of("keys.close"), "act-second", this::close);
    GridPane grid = new GridPane();
    grid.setHgap(24);
    grid.setVgap(5);
    int row = 0;
    for (String key : ROWS) {
      Label does = Pieces.paragraph(Texts.of("keys." + key + ".does"));
      GridPane.setHgrow(does, Priority.ALWAYS);
      Label pressed = Pieces.label(Texts.of("keys." + key), "strong");
      pressed.setMinWidth(USE_PREF_SIZE);
      grid.addRow(row++, pressed, does);
    }
    // At twice the size the list is longer than the window: it scrolls, the button stays.
    SheetScroll list = new SheetScroll(grid);
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(Pieces.label(Texts.of("keys.title"), "section"), list, close);
  }

  public void open() {
    if (getChildren().isEmpty()) {
      make();
    }
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
