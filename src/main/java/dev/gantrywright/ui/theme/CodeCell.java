package dev.gantrywright.ui.theme;

import javafx.scene.control.ListCell;

/** A row of a list that shows a line of text letter by letter, as it was said. */
public final class CodeCell extends ListCell<String> {
  public CodeCell() {
    getStyleClass().addAll("mono", "code");
  }

  @Override
  protected void updateItem(String line, boolean empty) {
    super.updateItem(line, empty);
    setText(empty ? null : line);
  }
}
