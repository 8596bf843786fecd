package dev.gantrywright.ui.check;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.ProfileDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The note in hand: what, remedies with what each would change, source, waiving. */
final class NoteDetail extends VBox {
  private final PrinterDesk desk;
  private final BiConsumer<MarginNote, String> waive;
  private MarginNote shown;
  private PrinterProfile shownOn;

  /**
   * @param waive sets a note aside with a reason
   */
  NoteDetail(PrinterDesk desk, BiConsumer<MarginNote, String> waive) {
    super(10);
    this.desk = desk;
    this.waive = waive;
    getStyleClass().add("detail");
  }

  void show(MarginNote note) {
    // The same note on the same profile is left alone, with a reason that is being typed.
    if (note != null && note == shown && desk.profile() == shownOn) {
      return;
    }
    shown = note;
    shownOn = desk.profile();
    getChildren().clear();
    if (note == null) {
      getChildren().add(Pieces.paragraph(Texts.of("check.choose"), "quiet"));
      return;
    }
    getChildren()
        .addAll(
            Pieces.row(
                8,
                Mark.of(note.gravity()).sign(14),
                Pieces.label(note.gravity().word(), "strong", note.gravity().word() + "-text"),
                Pieces.gap(),
                Pieces.label(note.id(), "quiet", "small")),
            Pieces.paragraph(note.place(), "section"),
            Pieces.paragraph(note.text()));
    boolean first = true;
    for (MarginNote.Fix fix : note.fixes()) {
      getChildren().add(remedy(note, fix, first));
      first = false;
    }
    Button open =
        Pieces.button("check-open", Texts.of("check.open"), "plain", () -> desk.goTo(note.path()));
    open.getStyleClass().add("flush");
    getChildren().add(open);
    getChildren().add(Pieces.label(Texts.of("check.why"), "quiet", "small"));
    getChildren().add(Pieces.paragraph(note.source(), "small"));
    Button page =
        Pieces.button(
            "check-page", Texts.of("note.page"), "plain", () -> desk.page().set(Optional.of(note)));
    page.getStyleClass().add("flush");
    page.setAccessibleText(Texts.of("note.pageOf", note.place()));
    getChildren().add(page);
    getChildren().add(waiver(note));
  }

  private VBox remedy(MarginNote note, MarginNote.Fix fix, boolean first) {
    if (fix.safety() == MarginNote.Safety.SHOW_ONLY) {
      return new VBox(
          4,
          Pieces.label(Texts.of("check.byHand"), "quiet", "small"),
          Pieces.paragraph(fix.title()));
    }
    Button apply =
        Pieces.button(
            "apply-" + note.slug(),
            fix.title(),
            first ? "act" : "act-second",
            () -> desk.apply(note, fix));
    apply.setMinWidth(0);
    apply.setWrapText(true);
    VBox box =
        new VBox(
            4,
            apply,
            Pieces.paragraph(
                Texts.of(fix.safety() == MarginNote.Safety.SAFE ? "check.safe" : "check.review"),
                "quiet",
                "small"));
    for (String line : changes(fix)) {
      box.getChildren().add(Pieces.paragraph(line, "small"));
    }
    return box;
  }

  /** What the remedy would change, field by field. */
  private Set<String> changes(MarginNote.Fix fix) {
    PrinterProfile after = fix.change().apply(desk.profile());
    Set<String> lines = new LinkedHashSet<>();
    var was = ProfileValues.tree(desk.profile());
    var will = ProfileValues.tree(after);
    for (String path : ProfileValues.paths(after)) {
      var before = ProfileValues.get(was, path);
      var then = ProfileValues.get(will, path);
      if (!before.equals(then)) {
        lines.add(
            PlaceNames.field(path)
                + "  "
                + before.map(ProfileDesk::quoted).orElse(Texts.of("value.none"))
                + " → "
                + then.map(ProfileDesk::quoted).orElse(Texts.of("value.none")));
      }
    }
    return lines;
  }

  private VBox waiver(MarginNote note) {
    TextField reason = new TextField();
    reason.setPromptText(Texts.of("check.reason"));
    reason.setAccessibleText(Texts.of("check.reason"));
    reason.setId("waive-reason");
    HBox box = new HBox(reason);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(reason, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    Button set =
        Pieces.button(
            "waive",
            Texts.of("check.waive"),
            "act-second",
            () -> waive.accept(note, reason.getText()));
    set.disableProperty().bind(reason.textProperty().map(String::isBlank));
    return new VBox(
        4,
        Pieces.paragraph(Texts.of("check.waiveTitle"), "quiet", "small"),
        Pieces.row(8, box, set));
  }
}
