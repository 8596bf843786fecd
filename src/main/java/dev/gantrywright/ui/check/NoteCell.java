package dev.gantrywright.ui.check;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.theme.Pieces;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One note in the list: sign, place, what was found; as high as its words need. */
final class NoteCell extends ListCell<MarginNote> {
  /** What the list's scroll bar may take of its width, pixels. */
  private static final double SCROLL_BAR = 20;

  private final HBox sign = new HBox();
  private final Label place = Pieces.paragraph("", "strong");
  private final Label family = Pieces.label("", "quiet", "small");
  private final Label text = Pieces.paragraph("");
  private final HBox row;

  NoteCell() {
    family.setMinWidth(Region.USE_PREF_SIZE);
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

  /**
   * High enough beside a scroll bar too: the list does not measure anew those that it laid out
   * before it found that it needs one.
   */
  @Override
  protected double computePrefHeight(double width) {
    double list = getListView() == null ? 0 : getListView().getWidth();
    double room = list <= 0 ? width : list - SCROLL_BAR;
    double sides = snappedLeftInset() + snappedRightInset();
    return snappedTopInset() + row.prefHeight(Math.max(1, room - sides)) + snappedBottomInset();
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
