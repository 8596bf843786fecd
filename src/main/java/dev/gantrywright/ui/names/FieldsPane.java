package dev.gantrywright.ui.names;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Choice;
import dev.gantrywright.ui.theme.Pieces;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The list of fields with its filter; keys settle the row in hand and lead to the next. */
final class FieldsPane extends VBox {
  private static final int LEAST_ROWS = 5;

  private final NamesDesk desk;
  private final NameDetail detail;
  private final ObservableList<NameRow> rows = FXCollections.observableArrayList();
  private final ListView<NameRow> list = new ListView<>(rows);
  private final Label empty = Pieces.paragraph("", "quiet");
  private final TextField search = new TextField();
  private final Map<NameFilter, ToggleButton> filters = new EnumMap<>(NameFilter.class);
  private NameFilter filter = NameFilter.ALL;
  private boolean refreshing;

  FieldsPane(NamesDesk desk, NameDetail detail) {
    super(10);
    this.desk = desk;
    this.detail = detail;
    list.setId("names-fields");
    list.setFixedCellSize(NameCell.HEIGHT);
    list.setCellFactory(view -> new NameCell(list.widthProperty()));
    list.setPlaceholder(empty);
    list.setMinHeight(LEAST_ROWS * NameCell.HEIGHT);
    list.setAccessibleText(Texts.of("names.fields"));
    list.getStyleClass().add("sheet-list");
    list.getSelectionModel().selectedItemProperty().addListener((o, before, now) -> inHand(now));
    list.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(choices(), list);
    setMinWidth(0);
  }

  private FlowPane choices() {
    for (NameFilter each : NameFilter.values()) {
      ToggleButton button = new ToggleButton();
      button.setId("names-filter-" + each.name().toLowerCase(java.util.Locale.ROOT));
      button.setOnAction(
          click -> {
            filter = each;
            refresh();
          });
      filters.put(each, button);
    }
    Choice choice = new Choice(filters.values().toArray(ToggleButton[]::new));
    search.setId("names-search");
    search.setPromptText(Texts.of("names.search"));
    search.setAccessibleText(Texts.of("names.search"));
    search.textProperty().addListener((o, before, now) -> refresh());
    HBox box = new HBox(search);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(search, Priority.ALWAYS);
    box.setPrefWidth(156);
    return new FlowPane(8, 8, choice, box);
  }

  private void keyed(KeyEvent key) {
    NameRow row = list.getSelectionModel().getSelectedItem();
    if (row == null) {
      return;
    }
    switch (key.getCode()) {
      case ENTER -> {
        desk.accept(row.path());
        toNext(row);
        key.consume();
      }
      case DELETE -> {
        desk.none(row.path());
        toNext(row);
        key.consume();
      }
      default -> {}
    }
  }

  /** The next row that asks, so that one key after another settles them all. */
  private void toNext(NameRow settled) {
    int from = index(settled.path());
    for (int i = 1; i <= rows.size(); i++) {
      int at = Math.floorMod(from + i, rows.size());
      if (rows.get(at).standing() == NameRow.Standing.ASKS) {
        select(at);
        return;
      }
    }
  }

  private int index(String path) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).path().equals(path)) {
        return i;
      }
    }
    return -1;
  }

  private void select(int at) {
    list.getSelectionModel().clearAndSelect(at);
    list.scrollTo(Math.max(0, at - 2));
  }

  private void inHand(NameRow row) {
    if (!refreshing) {
      detail.show(row);
    }
  }

  void refresh() {
    List<NameRow> all = desk.rows();
    filters.forEach(
        (each, button) -> {
          button.setText(Texts.of(each.key(), all.stream().filter(each::shows).count()));
          button.setSelected(each == filter);
        });
    NameRow kept = list.getSelectionModel().getSelectedItem();
    int place = list.getSelectionModel().getSelectedIndex();
    List<NameRow> next =
        all.stream().filter(filter::shows).filter(row -> row.matches(search.getText())).toList();
    refreshing = true;
    patch(next);
    int again = kept == null ? -1 : index(kept.path());
    int first = kept == null ? firstAsking() : Math.min(Math.max(0, place), rows.size() - 1);
    if (!rows.isEmpty()) {
      list.getSelectionModel().clearAndSelect(again >= 0 ? again : first);
    }
    refreshing = false;
    empty.setText(Texts.of(all.isEmpty() ? "names.nothing" : "names.filtered"));
    detail.show(list.getSelectionModel().getSelectedItem());
  }

  private int firstAsking() {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).standing() == NameRow.Standing.ASKS) {
        return i;
      }
    }
    return 0;
  }

  /** Rows that stay are left alone; only what differs is set. */
  private void patch(List<NameRow> wanted) {
    List<NameRow> next = new ArrayList<>(wanted);
    for (int i = 0; i < next.size(); i++) {
      if (i >= rows.size()) {
        rows.addAll(next.subList(i, next.size()));
        break;
      } else if (!rows.get(i).equals(next.get(i))) {
        rows.set(i, next.get(i));
      }
    }
    if (rows.size() > next.size()) {
      rows.remove(next.size(), rows.size());
    }
  }

  void takeFocus() {
    list.requestFocus();
  }
}
