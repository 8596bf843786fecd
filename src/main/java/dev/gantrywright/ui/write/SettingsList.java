package dev.gantrywright.ui.write;

import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.PrinterDesk;
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
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every setting of the folder with its state; a search over names, values and comments. */
final class SettingsList extends VBox {
  private final PrinterDesk desk;
  private final ObservableList<Setting> rows = FXCollections.observableArrayList();
  private final ListView<Setting> list = new ListView<>(rows);
  private final TextField search = new TextField();
  private final Label count = Pieces.label("", "quiet", "small");
  private List<Setting> all = List.of();

  SettingsList(PrinterDesk desk) {
    super(8);
    this.desk = desk;
    search.setId("settings-search");
    search.setPromptText(Texts.of("write.search"));
    search.setAccessibleText(Texts.of("write.search"));
    search.textProperty().addListener((o, before, now) -> filter());
    HBox box = new HBox(search);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(search, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    list.setId("settings");
    list.setFixedCellSize(26);
    list.setCellFactory(view -> new SettingCell());
    list.setAccessibleText(Texts.of("write.settings"));
    list.getStyleClass().add("sheet-list");
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(Pieces.row(12, box, count), list);
  }

  void refresh() {
    all = desk.settings();
    filter();
  }

  /** Looks for the macro that carries a profile field. */
  void find(String path) {
    refresh();
    String macro =
        desk.opened().get().names() == null
            ? null
            : desk.opened().get().names().entry(path).map(NameEntry::macro).orElse(null);
    search.setText(macro == null ? path : macro);
    list.getSelectionModel().selectFirst();
  }

  private void filter() {
    String[] words = search.getText().toLowerCase(Locale.ROOT).strip().split("\\s+");
    List<Setting> matching = all.stream().filter(setting -> matches(setting, words)).toList();
    rows.setAll(matching);
    count.setText(Texts.of("write.count", matching.size(), all.size()));
  }

  private static boolean matches(Setting setting, String[] words) {
    String text =
        (setting.name()
                + " "
                + setting.value()
                + " "
                + setting.comment()
                + " "
                + setting.file()
                + " "
                + word(setting))
            .toLowerCase(Locale.ROOT);
    for (String word : words) {
      if (!text.contains(word)) {
        return false;
      }
    }
    return true;
  }

  private static String word(Setting setting) {
    if (!setting.on()) {
      return Texts.of("setting.off");
    }
    return Texts.of("setting." + setting.state().name().toLowerCase(Locale.ROOT));
  }

  private static final class SettingCell extends ListCell<Setting> {
    private final Label state = Pieces.label("", "small");
    private final Label name = Pieces.label("", "mono", "code");
    private final Label value = Pieces.label("", "mono", "code", "strong");
    private final Label place = Pieces.label("", "quiet", "small");
    private final Label reason = Pieces.label("", "quiet", "small");
    private final HBox row;

    SettingCell() {
      state.setMinWidth(72);
      name.setMinWidth(300);
      name.setPrefWidth(300);
      value.setMinWidth(200);
      value.setPrefWidth(200);
      place.setMinWidth(170);
      row = Pieces.row(12, state, name, value, place, reason);
      row.setMinWidth(0);
      row.setPrefWidth(1);
      getStyleClass().add("diff-cell");
    }

    @Override
    protected void updateItem(Setting setting, boolean empty) {
      super.updateItem(setting, empty);
      setText(null);
      setGraphic(empty ? null : row);
      if (!empty) {
        boolean live = setting.on() && setting.state() == State.LIVE;
        state.setText(word(setting));
        state.setGraphic((live ? Mark.SETTLED : Mark.OPEN).sign(10));
        name.setText(setting.name());
        value.setText(setting.value());
        place.setText(setting.file() + ":" + setting.line());
        reason.setText(setting.state() == State.LIVE ? setting.section() : setting.reason());
        for (Label label : List.of(name, value)) {
          label.getStyleClass().remove("quiet");
          if (!live) {
            label.getStyleClass().add("quiet");
          }
        }
        setAccessibleText(word(setting) + ", " + setting.name() + " " + setting.value());
      }
    }
  }
}
