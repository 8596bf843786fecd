package dev.gantrywright.ui.names;

import dev.gantrywright.names.FoundPlace;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Picks any setting of the folder: searches while the user types, takes one with Enter. */
final class PlacePicker extends VBox {
  private static final int MOST = 60;
  private static final double CELL = 42;
  private static final int SHOWN = 5;

  private final BiFunction<String, Integer, List<FoundPlace>> finding;
  private final Consumer<FoundPlace> taking;
  private final ObservableList<FoundPlace> found = FXCollections.observableArrayList();
  private final ListView<FoundPlace> list = new ListView<>(found);
  private final TextField typed = new TextField();

  /**
   * @param finding the places that match a text, at most so many
   * @param taking takes the one that is picked
   */
  PlacePicker(BiFunction<String, Integer, List<FoundPlace>> finding, Consumer<FoundPlace> taking) {
    super(6);
    this.finding = finding;
    this.taking = taking;
    Label title = Pieces.label(Texts.of("names.pick"), "strong");
    typed.setId("names-pick");
    typed.setPromptText(Texts.of("names.pick.prompt"));
    typed.setAccessibleText(Texts.of("names.pick") + ": " + Texts.of("names.pick.prompt"));
    title.setLabelFor(typed);
    typed.textProperty().addListener((o, before, now) -> refresh());
    typed.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    HBox box = new HBox(typed);
    HBox.setHgrow(typed, Priority.ALWAYS);
    box.getStyleClass().add("field-box");
    list.setId("names-picks");
    list.setFixedCellSize(CELL);
    list.setCellFactory(view -> new PickCell());
    list.setPlaceholder(Pieces.label(Texts.of("names.pick.none"), "quiet"));
    list.setAccessibleText(Texts.of("names.pick"));
    list.getStyleClass().add("sheet-list");
    list.setPrefHeight(SHOWN * CELL + 2);
    list.setMinHeight(2 * CELL + 2);
    list.setOnMouseClicked(
        click -> {
          if (click.getClickCount() == 2) {
            take();
          }
        });
    list.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            take();
            key.consume();
          }
        });
    getChildren().addAll(title, box, list);
  }

  void clear() {
    typed.clear();
  }

  void refresh() {
    found.setAll(finding.apply(typed.getText(), MOST));
    if (!typed.getText().isBlank() && !found.isEmpty()) {
      list.getSelectionModel().selectFirst();
    }
  }

  private void keyed(KeyEvent key) {
    int step =
        switch (key.getCode()) {
          case DOWN -> 1;
          case UP -> -1;
          default -> 0;
        };
    if (step != 0 && !found.isEmpty()) {
      int next = list.getSelectionModel().getSelectedIndex() + step;
      list.getSelectionModel().clearAndSelect(Math.max(0, Math.min(found.size() - 1, next)));
      list.scrollTo(list.getSelectionModel().getSelectedIndex());
      key.consume();
    } else if (key.getCode() == KeyCode.ENTER) {
      take();
      key.consume();
    }
  }

  private void take() {
    FoundPlace place = list.getSelectionModel().getSelectedItem();
    if (place != null) {
      taking.accept(place);
    }
  }

  private static final class PickCell extends ListCell<FoundPlace> {
    private final Label macro = Pieces.label("", "mono", "code");
    private final Label text = Pieces.label("", "mono", "code", "quiet");
    private final Label about = Pieces.label("", "quiet", "small");
    private final VBox words;

    PickCell() {
      macro.setMinWidth(0);
      text.setMinWidth(0);
      HBox head = Pieces.row(8, macro, text);
      head.setMinWidth(0);
      words = new VBox(2, head, about);
      words.setMinWidth(0);
      words.setPrefWidth(1);
      words.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
      getStyleClass().add("diff-cell");
    }

    @Override
    protected void updateItem(FoundPlace place, boolean empty) {
      super.updateItem(place, empty);
      setText(null);
      setGraphic(empty ? null : words);
      if (empty) {
        setAccessibleText(null);
        return;
      }
      macro.setText(place.shown());
      text.setText(place.text());
      String comment = place.comment().replaceAll("\\s+", " ").strip();
      String off = place.on() ? "" : Texts.of("setting.off") + " · ";
      about.setText(
          off + place.file() + ":" + place.line() + (comment.isEmpty() ? "" : " · " + comment));
      setAccessibleText(place.shown() + " " + place.text() + ", " + about.getText());
    }
  }
}
