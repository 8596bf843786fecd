package dev.gantrywright.ui.start;

import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.ProfileDifference;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import javafx.scene.layout.GridPane;
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
    grid.addRow(
        0,
        Pieces.label(Texts.of("compare.value"), "quiet", "small"),
        Pieces.label(left.title(), "strong"),
        Pieces.label(right.title(), "strong"));
    int at = 1;
    for (ProfileDifference.Row row : rows) {
      grid.addRow(
          at++,
          Pieces.label(PlaceNames.field(row.path()), "quiet"),
          Pieces.label(row.left()),
          Pieces.label(row.right()));
    }
    getChildren().add(grid);
  }
}
