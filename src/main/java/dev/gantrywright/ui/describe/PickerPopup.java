package dev.gantrywright.ui.describe;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.stage.Popup;

/** Offers catalogue rows that match what is typed; Down opens it, Enter takes one. */
final class PickerPopup {
  private static final int SHOWN = 9;

  private final TextInputControl text;
  private final List<PickerChoice> choices;
  private final Popup popup = new Popup();
  private final ListView<PickerChoice> list = new ListView<>();
  private boolean taking;

  PickerPopup(TextInputControl text, List<PickerChoice> choices) {
    this.text = text;
    this.choices = choices;
    list.setFixedCellSize(28);
    list.setPrefWidth(380);
    list.getStyleClass().add("picker");
    list.setCellFactory(view -> new PickerCell());
    list.setFocusTraversable(false);
    list.setAccessibleText(text.getAccessibleText());
    list.setOnMouseClicked(click -> take());
    popup.getContent().add(list);
    popup.setAutoHide(true);
    text.textProperty().addListener((o, before, now) -> typed());
    text.focusedProperty().addListener((o, before, now) -> popup.hide());
    text.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
  }

  private void typed() {
    if (text.isFocused() && !taking) {
      offer(choices.stream().filter(choice -> choice.matches(text.getText())).toList());
    }
  }

  private void offer(List<PickerChoice> matching) {
    boolean alone = matching.size() == 1 && matching.get(0).value().equals(text.getText());
    if (matching.isEmpty() || alone || text.getScene() == null) {
      popup.hide();
      return;
    }
    list.getItems().setAll(matching);
    list.setPrefHeight(Math.min(SHOWN, matching.size()) * 28 + 2);
    if (!popup.isShowing()) {
      list.getStylesheets().setAll(text.getScene().getStylesheets());
      Bounds at = text.localToScreen(text.getBoundsInLocal());
      popup.show(text, at.getMinX(), at.getMaxY() + 4);
    }
  }

  private void keyed(KeyEvent key) {
    if (key.getCode() == KeyCode.DOWN && !popup.isShowing()) {
      offer(choices);
      key.consume();
    } else if (popup.isShowing()) {
      switch (key.getCode()) {
        case DOWN -> move(1, key);
        case UP -> move(-1, key);
        case ENTER -> {
          take();
          key.consume();
        }
        case ESCAPE -> {
          popup.hide();
          key.consume();
        }
        default -> {}
      }
    }
  }

  private void move(int step, KeyEvent key) {
    int next = list.getSelectionModel().getSelectedIndex() + step;
    list.getSelectionModel().select(Math.max(0, Math.min(list.getItems().size() - 1, next)));
    list.scrollTo(list.getSelectionModel().getSelectedIndex());
    key.consume();
  }

  private void take() {
    PickerChoice choice = list.getSelectionModel().getSelectedItem();
    if (choice != null) {
      taking = true;
      text.setText(choice.value());
      text.positionCaret(choice.value().length());
      taking = false;
      popup.hide();
    }
  }

  private static final class PickerCell extends ListCell<PickerChoice> {
    private final Label value = new Label();
    private final Label about = new Label();
    private final HBox row = new HBox(12, value, about);

    PickerCell() {
      value.getStyleClass().add("strong");
      value.setMinWidth(120);
      about.getStyleClass().addAll("quiet", "small");
    }

    @Override
    protected void updateItem(PickerChoice choice, boolean empty) {
      super.updateItem(choice, empty);
      setGraphic(empty ? null : row);
      if (!empty) {
        value.setText(choice.value());
        about.setText(choice.about());
      }
    }
  }
}
