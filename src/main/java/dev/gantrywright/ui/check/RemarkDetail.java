package dev.gantrywright.ui.check;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.ProfileDesk;
import dev.gantrywright.ui.state.Remark;
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

/** The remark in hand: what, remedies with what each would change, source, waiving. */
final class RemarkDetail extends VBox {
  private final PrinterDesk desk;
  private final BiConsumer<Remark, String> waive;
  private Remark shown;
  private PrinterProfile shownOn;

  /**
   * @param waive sets a remark aside with a reason
   */
  RemarkDetail(PrinterDesk desk, BiConsumer<Remark, String> waive) {
    super(10);
    this.desk = desk;
    this.waive = waive;
    getStyleClass().add("detail");
  }

  void show(Remark remark) {
    // The same remark on the same profile is left alone, with a reason that is being typed.
    if (remark != null && remark == shown && desk.profile() == shownOn) {
      return;
    }
    shown = remark;
    shownOn = desk.profile();
    getChildren().clear();
    if (remark == null) {
      getChildren().add(Pieces.paragraph(Texts.of("check.choose"), "quiet"));
      return;
    }
    getChildren()
        .addAll(
            Pieces.row(
                8,
                Mark.of(remark.gravity()).sign(14),
                Pieces.label(remark.gravity().word(), "strong", remark.gravity().word() + "-text"),
                Pieces.gap(),
                Pieces.label(remark.id(), "quiet", "small")),
            Pieces.paragraph(remark.place(), "section"),
            Pieces.paragraph(remark.text()));
    boolean first = true;
    for (Remark.Fix fix : remark.fixes()) {
      getChildren().add(remedy(remark, fix, first));
      first = false;
    }
    Button open =
        Pieces.button(
            "check-open", Texts.of("check.open"), "plain", () -> desk.goTo(remark.path()));
    getChildren().add(open);
    getChildren().add(Pieces.label(Texts.of("check.why"), "quiet", "small"));
    getChildren().add(Pieces.paragraph(remark.source(), "small"));
    Button page =
        Pieces.button(
            "check-page",
            Texts.of("note.page"),
            "plain",
            () -> desk.page().set(Optional.of(remark)));
    page.setAccessibleText(Texts.of("note.pageOf", remark.place()));
    getChildren().add(page);
    getChildren().add(waiver(remark));
  }

  private VBox remedy(Remark remark, Remark.Fix fix, boolean first) {
    if (fix.safety() == Remark.Safety.SHOW_ONLY) {
      return new VBox(
          4,
          Pieces.label(Texts.of("check.byHand"), "quiet", "small"),
          Pieces.paragraph(fix.title()));
    }
    Button apply =
        Pieces.button(
            "apply-" + remark.slug(),
            fix.title(),
            first ? "act" : "act-second",
            () -> desk.apply(remark, fix));
    apply.setMinWidth(0);
    apply.setWrapText(true);
    VBox box =
        new VBox(
            4,
            apply,
            Pieces.paragraph(
                Texts.of(fix.safety() == Remark.Safety.SAFE ? "check.safe" : "check.review"),
                "quiet",
                "small"));
    for (String line : changes(fix)) {
      box.getChildren().add(Pieces.paragraph(line, "small"));
    }
    return box;
  }

  /** What the remedy would change, field by field. */
  private Set<String> changes(Remark.Fix fix) {
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

  private VBox waiver(Remark remark) {
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
            () -> waive.accept(remark, reason.getText()));
    set.disableProperty().bind(reason.textProperty().map(String::isBlank));
    return new VBox(
        4,
        Pieces.paragraph(Texts.of("check.waiveTitle"), "quiet", "small"),
        Pieces.row(8, box, set));
  }
}
