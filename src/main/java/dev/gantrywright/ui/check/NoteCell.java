package dev.gantrywright.ui.check;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.theme.Pieces;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One note in the list: sign, place, what was found. */
final class NoteCell extends ListCell<MarginNote> {
  private final HBox sign = new HBox();
  private final Label place = Pieces.label("", "strong");
  private final Label family = Pieces.label("", "quiet", "small");
  private final Label text = Pieces.label("");
  private final HBox row;

  NoteCell() {
    HBox head = Pieces.row(12, place, Pieces.gap(), family);
    text.setMaxWidth(Double.MAX_VALUE);
    VBox words = new VBox(3, head, text);
    HBox.setHgrow(words, Priority.ALWAYS);
    words.setMinWidth(0);
    sign.setAlignment(Pos.TOP_CENTER);
    sign.setPadding(new javafx.geometry.Insets(2, 0, 0, 0));
    row = new HBox(12, sign, words);
    row.setMinWidth(0);
    row.setPrefWidth(1);
    getStyleClass().add("note-cell");
  }

  @Override
  protected void updateItem(MarginNote note, boolean empty) {
    super.updateItem(note, empty);
    setText(null);
    setGraphic(empty ? null : row);
    if (!empty) {
      sign.getChildren().setAll(Mark.of(note.gravity()).sign(14));
      place.setText(note.place());
      family.setText(note.family());
      text.setText(note.text());
      setAccessibleText(note.gravity().word() + ", " + note.place() + ": " + note.text());
    }
  }
}
