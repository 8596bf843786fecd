package dev.gantrywright.ui.names;

import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.OtherName;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The field in hand: its line, why, what it means, the runners-up, and the picker. */
final class NameDetail extends VBox {
  private final PrinterDesk printer;
  private final NamesDesk desk;
  private final PlacePicker picker;
  private final VBox facts = new VBox(8);
  private NameRow row;

  NameDetail(PrinterDesk printer, NamesDesk desk) {
    super(14);
    this.printer = printer;
    this.desk = desk;
    picker = new PlacePicker(desk::find, place -> desk.choose(row.path(), place));
    getStyleClass().add("detail");
    setMinWidth(0);
    getChildren().addAll(facts, picker);
  }

  /** Shows a row; null for none. */
  void show(NameRow next) {
    boolean same = row != null && next != null && row.path().equals(next.path());
    row = next;
    facts.getChildren().clear();
    picker.setVisible(next != null);
    if (!same) {
      picker.clear();
    }
    picker.refresh();
    if (next == null) {
      return;
    }
    facts.getChildren().add(Pieces.paragraph(next.label(), "section"));
    facts.getChildren().add(Pieces.paragraph(standing(), "quiet"));
    NameEntry entry = next.entry();
    if (entry != null && entry.macro() != null) {
      line(entry);
      why(entry);
      facts.getChildren().addAll(MeaningChoice.of(next, desk));
    }
    facts.getChildren().add(acts());
    if (entry != null && !entry.others().isEmpty()) {
      others(entry.others());
    }
    facts.applyCss();
  }

  private String standing() {
    String key = "names.words." + row.standing().name().toLowerCase(Locale.ROOT);
    return Texts.of(key, row.percent());
  }

  private void line(NameEntry entry) {
    Label macro = Pieces.paragraph(row.macro(), "mono", "strong");
    Label place = Pieces.paragraph(row.place(), "quiet", "small");
    VBox box = new VBox(4, macro, place);
    FolderLine.of(desk, entry)
        .ifPresent(text -> box.getChildren().add(1, Pieces.paragraph(text, "mono", "code")));
    box.getStyleClass().add("command-line");
    facts.getChildren().add(box);
    FolderLine.value(desk, row.path(), entry)
        .ifPresent(
            value ->
                facts
                    .getChildren()
                    .add(
                        Pieces.paragraph(
                            Texts.of("names.reads", value, printer.values().quoted(row.path())))));
  }

  private void why(NameEntry entry) {
    VBox lines = new VBox(2, Pieces.label(Texts.of("names.why"), "strong"));
    entry.evidence().forEach(line -> lines.getChildren().add(Pieces.paragraph("· " + line)));
    facts.getChildren().add(lines);
  }

  private FlowPane acts() {
    FlowPane acts = new FlowPane(8, 8);
    boolean named = row.entry() != null && row.entry().macro() != null;
    if (named && !row.entry().byUser()) {
      acts.getChildren()
          .add(act("names-accept", "names.accept", "act", () -> desk.accept(row.path())));
    }
    if (row.standing() != NameRow.Standing.NONE) {
      acts.getChildren()
          .add(act("names-none", "names.none", "act-second", () -> desk.none(row.path())));
    }
    if (row.entry() != null && row.entry().byUser()) {
      acts.getChildren()
          .add(act("names-leave", "names.leave", "act-second", () -> desk.leave(row.path())));
    }
    if (named) {
      acts.getChildren()
          .add(act("names-line", "names.line", "plain", () -> printer.goToLine(row.path())));
      acts.getChildren().get(acts.getChildren().size() - 1).getStyleClass().add("flush");
    }
    return acts;
  }

  private Button act(String id, String key, String style, Runnable act) {
    Button button = Pieces.button(id, Texts.of(key), style, act);
    button.setAccessibleText(Texts.of(key) + ": " + row.label());
    return button;
  }

  private void others(List<OtherName> others) {
    VBox box = new VBox(4, Pieces.label(Texts.of("names.others"), "strong"));
    for (OtherName other : others) {
      String shown = NameRow.shown(other.macro(), other.element());
      Label macro = Pieces.paragraph(shown, "mono", "code");
      Label place =
          Pieces.paragraph(
              other.file() + ":" + other.line() + " · " + NameRow.percent(other.confidence()),
              "quiet",
              "small");
      VBox words = new VBox(1, macro, place);
      words.setMinWidth(0);
      HBox.setHgrow(words, Priority.ALWAYS);
      Button use =
          Pieces.button(
              "names-other-" + others.indexOf(other),
              Texts.of("names.use"),
              "act-second",
              () -> desk.choose(row.path(), other.macro(), other.element()));
      use.setAccessibleText(Texts.of("names.use") + ": " + shown);
      use.setDisable(!desk.ready());
      box.getChildren().add(Pieces.row(8, words, use));
    }
    facts.getChildren().add(box);
  }
}
