package dev.gantrywright.ui.write;

import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.Refusal;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.DiffRow;
import dev.gantrywright.ui.state.DiffRows;
import dev.gantrywright.ui.state.ExportDesk;
import dev.gantrywright.ui.state.FolderState;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Planned;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Choice;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The Write stage: what would change in the folder, and the patched folder itself. */
public final class WriteView extends VBox implements Subscription {
  /** A line of text that is read without moving the head, pixels. */
  private static final double EMPTY = 560;

  /** Of the list: nine rows, a changed line with what stands around it, pixels. */
  private static final double LEAST = 9 * DiffCell.HEIGHT;

  private final PrinterDesk desk;
  private final ObservableList<DiffRow> rows = FXCollections.observableArrayList();
  private final ListView<DiffRow> list = new ListView<>(rows);
  private final SettingsList settings;
  private final Label summary = Pieces.label("", "quiet");
  private final Label empty = Pieces.paragraph("", "quiet");
  private final Button toBuild;
  private final VBox refused = new VBox(2);
  private final ToggleButton lines = new ToggleButton(Texts.of("write.changes"));
  private final ToggleButton whole = new ToggleButton(Texts.of("write.whole"));
  private final ToggleButton every = new ToggleButton(Texts.of("write.settings"));
  private final StackPane place = new StackPane();
  private final WholeLine chosen = new WholeLine();
  private final ExportBar export;
  private final Subscriptions subscriptions = new Subscriptions();
  private List<DiffRow> shown;
  private boolean margin = true;

  /**
   * @param open opens a folder in the system's own window
   */
  public WriteView(PrinterDesk desk, ExportDesk export, Consumer<Path> open) {
    super(10);
    this.desk = desk;
    this.export = new ExportBar(desk, export, open);
    this.settings = new SettingsList(desk);
    getStyleClass().add("form");
    list.setFixedCellSize(DiffCell.HEIGHT);
    list.setCellFactory(view -> new DiffCell(desk::goTo));
    toBuild =
        Pieces.button(
            "write-to-build", Texts.of("write.toBuild"), "act-second", () -> desk.goTo("build"));
    VBox nothing = new VBox(12, empty, toBuild);
    nothing.setAlignment(Pos.CENTER);
    nothing.setMaxWidth(EMPTY);
    list.setPlaceholder(nothing);
    list.widthProperty().addListener((o, before, now) -> widened(now.doubleValue()));
    list.setId("diff");
    list.setAccessibleText(Texts.of("write.changes"));
    list.getStyleClass().add("sheet-list");
    list.setOnKeyPressed(
        key -> {
          DiffRow row = list.getSelectionModel().getSelectedItem();
          if (key.getCode() == KeyCode.ENTER && row != null && !row.path().isEmpty()) {
            desk.goTo(row.path().split(", ")[0]);
          }
        });
    Choice choice = new Choice(lines, whole, every);
    choice.setMinWidth(USE_PREF_SIZE);
    lines.setSelected(true);
    lines.setOnAction(click -> choose(lines));
    whole.setOnAction(click -> choose(whole));
    every.setOnAction(click -> choose(every));
    lines.setId("write-changes");
    whole.setId("write-whole");
    every.setId("write-settings");
    VBox.setVgrow(place, Priority.ALWAYS);
    place.setMinHeight(LEAST);
    place.getChildren().setAll(list);
    getChildren()
        .addAll(
            Pieces.heading(
                Pieces.label(Texts.of("stage.write"), "title"), summary, Pieces.gap(), choice),
            this.export,
            refused,
            place,
            chosen);
    list.getSelectionModel().selectedItemProperty().addListener((o, b, now) -> readWhole());
    subscriptions.add(desk.planned().observe(this::show));
    subscriptions.add(desk.folder().state().listen(state -> summary()));
    subscriptions.add(desk.line().observe(this::jump));
  }

  /** Without room for a margin the reasons stand in rows of their own. */
  private void widened(double width) {
    boolean room = DiffCell.hasMargin(width);
    if (room != margin) {
      margin = room;
      shown = null;
      show(desk.planned().get());
    }
  }

  private void choose(ToggleButton next) {
    for (ToggleButton each : List.of(lines, whole, every)) {
      each.setSelected(each == next);
    }
    place.getChildren().setAll(next == every ? settings : list);
    desk.wholeFiles(next == whole);
    shown = null;
    show(desk.planned().get());
  }

  private void show(Planned planned) {
    Optional<PatchPlan> plan = planned.plan();
    if (plan.isEmpty()) {
      rows.clear();
      readWhole();
      shown = null;
      refused.getChildren().clear();
      boolean folder = desk.opened().get().folder() != null;
      String named = desk.profile().build().folder();
      empty.setText(
          planned.revision() < 0
              ? ""
              : folder
                  ? Texts.of("write.noNames")
                  : named == null
                      ? Texts.of("write.noFolder")
                      : Texts.of("write.folderGone", named));
      show(toBuild, !folder);
      summary();
      return;
    }
    List<DiffRow> next = whole.isSelected() ? planned.whole() : planned.rows();
    if (next == shown) {
      return;
    }
    shown = next;
    PatchPlan made = plan.get();
    patch(margin ? next : DiffRows.withReasons(next));
    summary();
    empty.setText(Texts.of("write.nothing"));
    show(toBuild, false);
    refusals(made.refusals());
    if (every.isSelected()) {
      settings.refresh();
    }
  }

  /** What would be written; of which folder, as long as that is not the one that is named. */
  private void summary() {
    Optional<PatchPlan> plan = desk.planned().get().plan();
    FolderState folder = desk.folder().state().get();
    if (plan.isEmpty()) {
      summary.setText("");
    } else if (!folder.current() && folder.another()) {
      summary.setText(Texts.of("write.former"));
    } else if (plan.get().lines().isEmpty()) {
      summary.setText(Texts.of("route.written"));
    } else {
      PatchPlan made = plan.get();
      long files = made.lines().stream().map(line -> line.file()).distinct().count();
      summary.setText(
          Texts.of("write.summary", made.lines().size(), files, made.unchanged().size()));
    }
  }

  /** Only rows that differ are set, so that the list repaints no more than it must. */
  private void patch(List<DiffRow> next) {
    DiffRow held = list.getSelectionModel().getSelectedItem();
    int same = Math.min(rows.size(), next.size());
    for (int i = 0; i < same; i++) {
      DiffRow row = next.get(i);
      if (rows.get(i) != row && !rows.get(i).equals(row)) {
        rows.set(i, row);
      }
    }
    if (rows.size() > next.size()) {
      rows.remove(next.size(), rows.size());
    } else if (next.size() > rows.size()) {
      rows.addAll(next.subList(rows.size(), next.size()));
    }
    hold(held);
    readWhole();
  }

  /** What was chosen stays chosen where rows came in above it. */
  private void hold(DiffRow held) {
    int at = list.getSelectionModel().getSelectedIndex();
    if (held == null || at >= 0 && at < rows.size() && samePlace(rows.get(at), held)) {
      return;
    }
    for (int i = 0; i < rows.size(); i++) {
      if (samePlace(rows.get(i), held)) {
        list.getSelectionModel().clearAndSelect(i);
        return;
      }
    }
  }

  private static boolean samePlace(DiffRow one, DiffRow other) {
    boolean reasons = one.kind() == DiffRow.Kind.REASON;
    return one.line() == other.line()
        && one.file().equals(other.file())
        && reasons == (other.kind() == DiffRow.Kind.REASON);
  }

  /** The row itself, not what was chosen when it said something else. */
  private void readWhole() {
    int at = list.getSelectionModel().getSelectedIndex();
    chosen.show(at >= 0 && at < rows.size() ? rows.get(at) : null);
    boolean readable = !rows.isEmpty() && !every.isSelected();
    chosen.setVisible(readable);
    chosen.setManaged(readable);
  }

  private void refusals(List<Refusal> all) {
    refused.getChildren().clear();
    for (Refusal refusal : all.subList(0, Math.min(4, all.size()))) {
      String what = refusal.path().isEmpty() ? refusal.value() : PlaceNames.field(refusal.path());
      refused
          .getChildren()
          .add(
              Pieces.row(
                  8,
                  Mark.WARNING.sign(12),
                  Pieces.label(Texts.of("write.refused", what, refusal.reason()), "small")));
    }
    if (all.size() > 4) {
      refused
          .getChildren()
          .add(Pieces.label(Texts.of("write.more", all.size() - 4), "quiet", "small"));
    }
  }

  private void jump(Optional<String> path) {
    path.ifPresent(
        wanted -> {
          desk.line().set(Optional.empty());
          Map<String, Integer> places = DiffRows.places(rows);
          Integer at = places.get(wanted);
          if (at != null) {
            choose(whole.isSelected() ? whole : lines);
            list.getSelectionModel().clearAndSelect(at);
            list.scrollTo(Math.max(0, at - 6));
            list.requestFocus();
          } else {
            choose(every);
            settings.find(wanted);
          }
        });
  }

  private static void show(Button button, boolean on) {
    button.setVisible(on);
    button.setManaged(on);
  }

  @Override
  public void close() {
    export.close();
    subscriptions.close();
  }
}
