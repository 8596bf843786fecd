package dev.gantrywright.ui.write;

import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.FoundSetting;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import javafx.beans.value.ObservableDoubleValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every setting of the folder with its state; a search over names, values and comments. */
final class SettingsList extends VBox {
  private final PrinterDesk desk;
  private final ObservableList<FoundSetting> rows = FXCollections.observableArrayList();
  private final ListView<FoundSetting> list = new ListView<>(rows);
  private final TextField search = new TextField();
  private final Label count = Pieces.label("", "quiet", "small");
  private List<FoundSetting> all = List.of();

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
    list.setCellFactory(view -> new SettingCell(list.widthProperty()));
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
    List<FoundSetting> matching = FoundSetting.matching(all, search.getText());
    rows.setAll(matching);
    count.setText(Texts.of("write.count", matching.size(), all.size()));
  }

  private static final class SettingCell extends ListCell<FoundSetting> {
    private static final double STATE = 72;
    private static final double PLACE = 170;

    /** From this width on the reason has room too. */
    private static final double ROOMY = 840;

    private final Label state = Pieces.label("", "small");
    private final Label name = Pieces.label("", "mono", "code");
    private final Label value = Pieces.label("", "mono", "code", "strong");
    private final Label place = Pieces.label("", "quiet", "small");
    private final Label reason = Pieces.label("", "quiet", "small");
    private final HBox row;

    /**
     * @param width of the list
     */
    SettingCell(ObservableDoubleValue width) {
      state.setMinWidth(STATE);
      name.setMinWidth(0);
      value.setMinWidth(0);
      place.setPrefWidth(PLACE);
      place.setTextOverrun(OverrunStyle.LEADING_ELLIPSIS);
      width.addListener((o, before, now) -> fit(now.doubleValue()));
      fit(width.get());
      row = Pieces.row(12, state, name, value, place, reason);
      row.setMinWidth(0);
      row.setPrefWidth(1);
      getStyleClass().add("diff-cell");
    }

    /** The name and its value stand in any window; where and why, where there is room. */
    private void fit(double wide) {
      double room = wide - STATE - 72;
      name.setPrefWidth(Math.min(300, room * 0.5));
      value.setPrefWidth(Math.min(200, room * 0.4));
      place.setMinWidth(wide < ROOMY ? 0 : PLACE);
      reason.setVisible(wide >= ROOMY);
      reason.setManaged(wide >= ROOMY);
    }

    @Override
    protected void updateItem(FoundSetting found, boolean empty) {
      super.updateItem(found, empty);
      setText(null);
      setGraphic(empty ? null : row);
      if (!empty) {
        Setting setting = found.setting();
        boolean live = setting.on() && setting.state() == State.LIVE;
        state.setText(found.state());
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
        setAccessibleText(found.state() + ", " + setting.name() + " " + setting.value());
      }
    }
  }
}
