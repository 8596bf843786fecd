package dev.gantrywright.ui.write;

import dev.gantrywright.ui.state.DiffRow;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * The chosen line read whole, below two halves that cut long comments: what stands, what will
 * stand, and why. Its words wrap, can be marked and copied, and are reached by Tab.
 */
final class WholeLine extends VBox {
  private final Label place = Pieces.label("", "strong");
  private final Label cause = Pieces.paragraph("", "small");
  private final HBox head = Pieces.row(16, place, cause);
  private final Label hint = Pieces.paragraph(Texts.of("write.choose"), "small", "quiet");
  private final GridPane lines = new GridPane();
  private DiffRow shown;

  /** Made with the first line that is chosen: they are dear, and many a session needs none. */
  private WrappedLine before;

  private WrappedLine after;
  private Label was;
  private Label becomes;

  WholeLine() {
    super(4);
    setId("whole-line");
    getStyleClass().add("whole-line");
    place.setMinWidth(USE_PREF_SIZE);
    HBox.setHgrow(cause, Priority.ALWAYS);
    cause.setMaxWidth(Double.MAX_VALUE);
    cause.setId("whole-line-cause");
    lines.setHgap(12);
    lines.setVgap(2);
    getChildren().setAll(hint);
  }

  /**
   * Shows a row; a heading or a fold has nothing to read.
   *
   * @param row what is chosen; null where nothing is
   */
  void show(DiffRow row) {
    if (row == shown || row != null && row.equals(shown)) {
      return;
    }
    shown = row;
    boolean code =
        row != null && (row.kind() == DiffRow.Kind.CHANGED || row.kind() == DiffRow.Kind.SAME);
    if (row == null || !code && row.kind() != DiffRow.Kind.REASON) {
      getChildren().setAll(hint);
      return;
    }
    place.setText(Texts.of("write.place", row.file(), row.line()));
    boolean causes = row.faded().isEmpty();
    cause.setText(row.cause().isEmpty() ? row.faded() : row.cause());
    Pieces.style(cause, "accent-text", causes);
    Pieces.style(cause, "quiet", !causes);
    if (code) {
      code(row);
      getChildren().setAll(head, lines);
    } else {
      getChildren().setAll(head);
    }
  }

  private void code(DiffRow row) {
    if (before == null) {
      make();
    }
    boolean changed = row.kind() == DiffRow.Kind.CHANGED;
    before.show(row.before());
    before.setAccessibleText(
        Texts.of(changed ? "write.was.line" : "write.same.line", row.line(), row.file()));
    Pieces.style(before, "diff-removed", changed);
    was.setText(Texts.of(changed ? "write.was" : "write.same"));
    if (changed) {
      after.show(row.after());
      after.setAccessibleText(Texts.of("write.becomes.line", row.line(), row.file()));
    }
    after.setVisible(changed);
    after.setManaged(changed);
    becomes.setVisible(changed);
    becomes.setManaged(changed);
  }

  private void make() {
    before = new WrappedLine("whole-line-before");
    after = new WrappedLine("whole-line-after");
    after.getStyleClass().add("diff-added");
    was = side();
    becomes = side();
    becomes.setText(Texts.of("write.becomes"));
    GridPane.setHgrow(before, Priority.ALWAYS);
    GridPane.setHgrow(after, Priority.ALWAYS);
    lines.addRow(0, was, before);
    lines.addRow(1, becomes, after);
  }

  private static Label side() {
    Label side = Pieces.label("", "quiet", "small");
    side.setMinWidth(USE_PREF_SIZE);
    GridPane.setValignment(side, javafx.geometry.VPos.TOP);
    side.setPadding(new javafx.geometry.Insets(4, 0, 0, 0));
    return side;
  }
}
