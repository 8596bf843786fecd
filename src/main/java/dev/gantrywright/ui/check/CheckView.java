package dev.gantrywright.ui.check;

import dev.gantrywright.ui.state.FolderState;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.MarginNotes;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.SettledAt;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Beside;
import dev.gantrywright.ui.theme.Choice;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The Check stage: the list of notes, worst first, and the one in hand. */
public final class CheckView extends Beside implements Subscription {
  private static final double CHOICE = 196;

  /** Of the list: two findings of two lines each, pixels. */
  private static final double LEAST = 162;

  private final PrinterDesk desk;
  private final ObservableList<MarginNote> rows = FXCollections.observableArrayList();
  private final ListView<MarginNote> list = new ListView<>(rows);
  private final NoteDetail detail;
  private final Label summary = Pieces.label("", "quiet");
  private final Label empty = Pieces.paragraph("", "quiet");
  private final TextField search = new TextField();
  private final Set<Gravity> wanted = EnumSet.allOf(Gravity.class);
  private final Button applySafe;
  private final ComboBox<String> family = new ComboBox<>();
  private final ComboBox<String> stage = new ComboBox<>();
  private boolean stale = true;
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param waive sets a note aside with a reason
   */
  public CheckView(PrinterDesk desk, BiConsumer<MarginNote, String> waive) {
    super(340, 0);
    this.desk = desk;
    detail = new NoteDetail(desk, waive);
    applySafe = Pieces.button("apply-safe", "", "act", desk::applySafe);
    list.setCellFactory(view -> new NoteCell());
    list.setPlaceholder(empty);
    list.setId("findings");
    list.setAccessibleText(Texts.of("stage.check"));
    list.getStyleClass().add("sheet-list");
    list.getSelectionModel().selectedItemProperty().addListener((o, b, now) -> detail.show(now));
    list.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            applyFirst();
          }
        });
    list.setMinHeight(LEAST);
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox middle = new VBox(10, heading(), filters(), list);
    middle.getStyleClass().add("form");
    SheetScroll side = new SheetScroll(detail);
    side.getStyleClass().add("margin-pane");
    put(middle, side);
    // Out of sight nothing is laid out; it catches up when it is looked at.
    sceneProperty()
        .addListener(
            (o, before, now) -> {
              if (now != null && stale) {
                refresh();
              }
            });
    subscriptions.add(desk.judged().observe(judged -> refresh()));
    subscriptions.add(desk.trouble().listen(trouble -> refresh()));
    subscriptions.add(desk.folder().state().listen(state -> words()));
  }

  private HBox heading() {
    return Pieces.heading(
        Pieces.label(Texts.of("stage.check"), "title"), summary, Pieces.gap(), applySafe);
  }

  /** Two rows: each choice keeps its words whole in the narrowest window. */
  private VBox filters() {
    List<ToggleButton> levels = new ArrayList<>();
    for (Gravity gravity : Gravity.values()) {
      ToggleButton button = new ToggleButton(Texts.of("check.show." + gravity.word()));
      button.setSelected(true);
      button.setOnAction(
          click -> {
            if (button.isSelected()) {
              wanted.add(gravity);
            } else {
              wanted.remove(gravity);
            }
            refresh();
          });
      levels.add(button);
    }
    Choice choice = new Choice(levels.toArray(ToggleButton[]::new));
    choice(stage, "check-stage", "check.stage");
    choice(family, "check-family", "check.family");
    search.setId("check-search");
    search.setPromptText(Texts.of("check.search"));
    search.setAccessibleText(Texts.of("check.search"));
    search.textProperty().addListener((o, before, now) -> refresh());
    HBox box = new HBox(search);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(search, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    choice.setMinWidth(USE_PREF_SIZE);
    box.setMinWidth(96);
    return new VBox(8, Pieces.row(12, choice, box), Pieces.row(12, stage, family));
  }

  private void choice(ComboBox<String> box, String id, String key) {
    box.setId(id);
    box.setAccessibleText(Texts.of(key));
    box.getItems().add(Texts.of(key + ".all"));
    box.getSelectionModel().selectFirst();
    box.setOnAction(chosen -> refresh());
    box.setPrefWidth(CHOICE);
  }

  private void applyFirst() {
    MarginNote note = list.getSelectionModel().getSelectedItem();
    if (note != null) {
      note.fixes().stream()
          .filter(fix -> fix.safety() != MarginNote.Safety.SHOW_ONLY)
          .findFirst()
          .ifPresent(fix -> desk.apply(note, fix));
    }
  }

  private boolean shown(MarginNote note) {
    String all =
        (note.place() + " " + note.text() + " " + note.family() + " " + note.id())
            .toLowerCase(Locale.ROOT);
    return wanted.contains(note.gravity())
        && passes(stage, SettledAt.of(note).title())
        && passes(family, note.family())
        && all.contains(search.getText().toLowerCase(Locale.ROOT).strip());
  }

  private static boolean passes(ComboBox<String> filter, String value) {
    return filter.getSelectionModel().getSelectedIndex() <= 0 || value.equals(filter.getValue());
  }

  /** What there are findings of; the chosen one stays even when its last finding is gone. */
  private static void offer(ComboBox<String> filter, Stream<String> found) {
    List<String> now = new ArrayList<>(List.of(filter.getItems().get(0)));
    found.distinct().forEach(now::add);
    String chosen = filter.getValue();
    if (chosen != null && !now.contains(chosen)) {
      now.add(chosen);
    }
    if (!now.equals(filter.getItems())) {
      filter.getItems().setAll(now);
      filter.setValue(chosen == null ? now.get(0) : chosen);
    }
  }

  private void refresh() {
    if (getScene() == null) {
      stale = true;
      return;
    }
    stale = false;
    offer(stage, desk.notes().stream().map(SettledAt::of).sorted().map(Stage::title));
    offer(family, desk.notes().stream().map(MarginNote::family).sorted());
    List<MarginNote> next = desk.notes().stream().filter(this::shown).toList();
    MarginNote kept = list.getSelectionModel().getSelectedItem();
    int place = list.getSelectionModel().getSelectedIndex();
    patch(next);
    long safe =
        desk.notes().stream()
            .filter(
                note -> note.fixes().stream().anyMatch(f -> f.safety() == MarginNote.Safety.SAFE))
            .count();
    applySafe.setText(Texts.of("check.applied", safe));
    applySafe.setVisible(safe > 0);
    words();
    select(kept, place);
  }

  /** How much was found; what of it is still to come while a folder is read. */
  private void words() {
    String counted = MarginNotes.counted(desk.notes());
    String trouble = desk.trouble().get();
    FolderState folder = desk.folder().state().get();
    boolean reads = folder.folderAhead();
    String found =
        !reads
            ? counted
            : counted.isEmpty()
                ? Texts.of("check.reading.none")
                : Texts.of("check.reading", counted);
    summary.setText(trouble.isEmpty() ? found : trouble);
    empty.setText(
        Texts.of(
            !desk.notes().isEmpty()
                ? "check.filtered"
                : reads
                    ? "check.reading.nothing"
                    : desk.judged().get().whole() ? "check.nothing" : "check.busy"));
  }

  /** Rows that stay are left alone; only what differs is set. */
  private void patch(List<MarginNote> next) {
    List<MarginNote> now = new ArrayList<>(next);
    for (int i = 0; i < now.size(); i++) {
      if (i >= rows.size()) {
        rows.add(now.get(i));
      } else if (!rows.get(i).equals(now.get(i))) {
        rows.set(i, now.get(i));
      }
    }
    if (rows.size() > now.size()) {
      rows.remove(now.size(), rows.size());
    }
  }

  private void select(MarginNote kept, int place) {
    int again = -1;
    for (int i = 0; i < rows.size() && kept != null; i++) {
      if (rows.get(i).key().equals(kept.key())) {
        again = i;
      }
    }
    int at = again >= 0 ? again : Math.min(Math.max(0, place), rows.size() - 1);
    list.getSelectionModel().clearAndSelect(at);
    detail.show(rows.isEmpty() ? null : rows.get(at));
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
