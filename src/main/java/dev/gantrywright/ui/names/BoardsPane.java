package dev.gantrywright.ui.names;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import java.util.Locale;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The boards and the build targets that the folder knows; Enter fills the profile. */
final class BoardsPane extends VBox {
  private final NamesDesk desk;
  private final BoardDetail detail;
  private final ObservableList<BoardRow> rows = FXCollections.observableArrayList();
  private final ListView<BoardRow> list = new ListView<>(rows);
  private final TextField search = new TextField();

  BoardsPane(NamesDesk desk, BoardDetail detail) {
    super(10);
    this.desk = desk;
    this.detail = detail;
    search.setId("names-board-search");
    search.setPromptText(Texts.of("names.board.search"));
    search.setAccessibleText(Texts.of("names.board.search"));
    search.textProperty().addListener((o, before, now) -> refresh());
    HBox box = new HBox(search);
    HBox.setHgrow(search, Priority.ALWAYS);
    box.getStyleClass().add("field-box");
    list.setId("names-boards");
    list.setFixedCellSize(54);
    list.setMinHeight(3 * 54);
    list.setCellFactory(view -> new BoardCell());
    list.setPlaceholder(Pieces.paragraph(Texts.of("names.board.nothing"), "quiet"));
    list.setAccessibleText(Texts.of("names.board.list"));
    list.getStyleClass().add("sheet-list");
    list.getSelectionModel().selectedItemProperty().addListener((o, b, now) -> detail.show(now));
    list.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            detail.use();
            key.consume();
          }
        });
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(box, list);
  }

  void refresh() {
    BoardRow kept = list.getSelectionModel().getSelectedItem();
    String typed = search.getText().toLowerCase(Locale.ROOT).strip();
    List<BoardRow> next =
        BoardRow.all(desk).stream()
            .filter(
                row ->
                    (row.name() + " " + row.comment() + " " + row.mcu())
                        .toLowerCase(Locale.ROOT)
                        .contains(typed))
            .toList();
    if (!next.equals(List.copyOf(rows))) {
      rows.setAll(next);
    }
    int again = kept == null ? -1 : rows.indexOf(kept);
    if (!rows.isEmpty()) {
      list.getSelectionModel().clearAndSelect(Math.max(0, again));
    }
    detail.show(list.getSelectionModel().getSelectedItem());
  }

  private static final class BoardCell extends ListCell<BoardRow> {
    private final HBox sign = new HBox();
    private final Label name = Pieces.label("", "mono", "strong");
    private final Label mcu = Pieces.label("", "mono", "code");
    private final Label about = Pieces.label("", "quiet", "small");
    private final HBox row;

    BoardCell() {
      name.setMinWidth(0);
      mcu.setMinWidth(USE_PREF_SIZE);
      HBox head = Pieces.row(10, name, Pieces.gap(), mcu);
      VBox words = new VBox(3, head, about);
      words.setMinWidth(0);
      HBox.setHgrow(words, Priority.ALWAYS);
      sign.setMinWidth(14);
      row = new HBox(10, sign, words);
      row.setMinWidth(0);
      row.setPrefWidth(1);
      getStyleClass().add("note-cell");
    }

    @Override
    protected void updateItem(BoardRow board, boolean empty) {
      super.updateItem(board, empty);
      setText(null);
      setGraphic(empty ? null : row);
      if (empty) {
        setAccessibleText(null);
        return;
      }
      Mark mark =
          board.notes().isEmpty() ? (board.chosen() ? Mark.SETTLED : Mark.OPEN) : Mark.WARNING;
      sign.getChildren().setAll(mark.sign(12));
      name.setText(board.name() + (board.number().isEmpty() ? "" : " = " + board.number()));
      mcu.setText(board.mcu());
      String kind = Texts.of(board.target() ? "names.board.target" : "names.board.board");
      String now = board.chosen() ? " · " + Texts.of("names.board.chosen") : "";
      String more = board.notes().isEmpty() ? board.comment() : String.join("; ", board.notes());
      about.setText(kind + now + (more.isEmpty() ? "" : " · " + more));
      setAccessibleText(kind + now + ", " + name.getText() + ", " + board.mcu() + ", " + more);
    }
  }
}
