package dev.gantrywright.ui.start;

import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.ProfileDifference;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Two printers side by side: the values in which they differ. */
final class Comparison extends VBox {
  Comparison(PrinterCard left, PrinterCard right) {
    super(10);
    getStyleClass().add("comparison");
    List<ProfileDifference.Row> rows =
        ProfileDifference.of(left.profile().orElseThrow(), right.profile().orElseThrow());
    getChildren()
        .add(
            Pieces.label(
                Texts.of("compare.title", left.title(), right.title(), rows.size()), "section"));
    GridPane grid = new GridPane();
    grid.setHgap(32);
    grid.setVgap(4);
    grid.getColumnConstraints().addAll(new ColumnConstraints(), value(), value());
    grid.addRow(
        0,
        Pieces.label(Texts.of("compare.value"), "quiet", "small"),
        Pieces.label(left.title(), "strong"),
        Pieces.label(right.title(), "strong"));
    int at = 1;
    for (ProfileDifference.Row row : rows) {
      grid.addRow(
          at++,
          name(PlaceNames.field(row.path())),
          Pieces.paragraph(row.left()),
          Pieces.paragraph(row.right()));
    }
    getChildren().add(grid);
  }

  /** Whole beside the longest of values, and level with its first line. */
  private static Label name(String words) {
    Label name = Pieces.label(words, "quiet");
    name.setMinWidth(USE_PREF_SIZE);
    GridPane.setValignment(name, VPos.TOP);
    return name;
  }

  /** One half of what the names leave; long values wrap. */
  private static ColumnConstraints value() {
    ColumnConstraints half = new ColumnConstraints(0, 1, Double.MAX_VALUE);
    half.setHgrow(Priority.ALWAYS);
    return half;
  }
}
