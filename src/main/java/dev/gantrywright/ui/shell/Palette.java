package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Comparator;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Finds commands, fields and settings by what is typed; Enter does the chosen one. */
public final class Palette extends VBox {
  private static final int SHOWN = 60;

  private final ObservableList<Command> rows = FXCollections.observableArrayList();
  private TextField typed;
  private ListView<Command> list;
  private List<Command> commands = List.of();
  private Node returnTo;

  public Palette() {
    getStyleClass().add("float");
    setMaxSize(620, 420);
    setVisible(false);
    setManaged(false);
  }

  /** Made when it is first asked for: a window that opens has other things to do. */
  private void make() {
    typed = new TextField();
    list = new ListView<>(rows);
    typed.setId("palette-typed");
    typed.setPromptText(Texts.of("palette.prompt"));
    typed.setAccessibleText(Texts.of("palette.prompt"));
    typed.textProperty().addListener((o, before, now) -> filter());
    typed.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    list.setFixedCellSize(28);
    list.setCellFactory(view -> new Row());
    list.setFocusTraversable(false);
    list.setAccessibleText(Texts.of("palette.list"));
    list.setOnMouseClicked(click -> run());
    list.getStyleClass().add("sheet-list");
    HBox box = new HBox(typed);
    HBox.setHgrow(typed, javafx.scene.layout.Priority.ALWAYS);
    box.getStyleClass().add("field-box");
    getChildren().addAll(box, list);
  }

  public void open(List<Command> all) {
    if (typed == null) {
      make();
    }
    commands = all;
    returnTo = getScene() == null ? null : getScene().getFocusOwner();
    typed.setText("");
    filter();
    setVisible(true);
    setManaged(true);
    typed.requestFocus();
  }

  public boolean shown() {
    return isVisible();
  }

  public void close() {
    setVisible(false);
    setManaged(false);
    if (returnTo != null) {
      returnTo.requestFocus();
    }
  }

  private void filter() {
    String asked = typed.getText();
    rows.setAll(
        commands.stream()
            .filter(command -> command.answers(asked) > 0)
            .sorted(Comparator.comparingInt((Command c) -> -c.answers(asked)))
            .limit(SHOWN)
            .toList());
    list.getSelectionModel().selectFirst();
  }

  private void keyed(KeyEvent key) {
    int at = list.getSelectionModel().getSelectedIndex();
    switch (key.getCode()) {
      case DOWN -> select(at + 1, key);
      case UP -> select(at - 1, key);
      case ENTER -> {
        key.consume();
        run();
      }
      case ESCAPE -> {
        key.consume();
        close();
      }
      default -> {}
    }
  }

  private void select(int row, KeyEvent key) {
    key.consume();
    int kept = Math.max(0, Math.min(rows.size() - 1, row));
    list.getSelectionModel().clearAndSelect(kept);
    list.scrollTo(Math.max(0, kept - 4));
  }

  private void run() {
    Command command = list.getSelectionModel().getSelectedItem();
    if (command != null) {
      close();
      command.act().run();
    }
  }

  private static final class Row extends ListCell<Command> {
    private final Label words = Pieces.label("");
    private final Label about = Pieces.label("", "quiet", "small");
    private final HBox row = Pieces.row(12, words, Pieces.gap(), about);

    Row() {
      row.setPrefWidth(1);
    }

    @Override
    protected void updateItem(Command command, boolean empty) {
      super.updateItem(command, empty);
      setText(null);
      setGraphic(empty ? null : row);
      if (!empty) {
        words.setText(command.words());
        about.setText(command.about());
        setAccessibleText(command.words());
      }
    }
  }
}
