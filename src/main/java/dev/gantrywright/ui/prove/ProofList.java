package dev.gantrywright.ui.prove;

import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Optional;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The lines of a proof: what the profile says against what the machine says. */
final class ProofList extends VBox {
  ProofList() {
    super(4);
  }

  void show(Optional<ProofReport> report) {
    getChildren().clear();
    report.ifPresent(this::list);
  }

  private void list(ProofReport report) {
    String key = report.passed() ? "prove.passed" : "prove.failed";
    long wrong = report.count(Check.Verdict.FAIL);
    getChildren()
        .add(
            Pieces.row(
                8,
                (report.passed() ? Mark.SETTLED : Mark.ERROR).sign(14),
                Pieces.label(Texts.of(key, report.count(Check.Verdict.PASS), wrong), "strong")));
    GridPane grid = new GridPane();
    grid.setHgap(16);
    grid.setVgap(4);
    int row = 0;
    for (Check check : report.checks()) {
      Mark mark =
          switch (check.verdict()) {
            case PASS -> Mark.SETTLED;
            case FAIL -> Mark.ERROR;
            case UNSURE -> Mark.WARNING;
            case NOT_REPORTED -> Mark.OPEN;
          };
      String place =
          check.path().isEmpty() ? check.family().phrase() : PlaceNames.field(check.path());
      grid.addRow(
          row++,
          mark.sign(11),
          Pieces.label(place),
          Pieces.label(check.expected(), "quiet"),
          Pieces.label(
              check.seen(), check.verdict() == Check.Verdict.FAIL ? "error-text" : "label"));
    }
    getChildren().add(grid);
  }
}
