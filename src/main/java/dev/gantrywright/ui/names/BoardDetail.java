package dev.gantrywright.ui.names;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The board or build target in hand, and what picking it puts into the profile. */
final class BoardDetail extends VBox {
  private final PrinterDesk printer;
  private final NamesDesk desk;
  private BoardRow row;
  private String trouble = "";

  BoardDetail(PrinterDesk printer, NamesDesk desk) {
    super(10);
    this.printer = printer;
    this.desk = desk;
    getStyleClass().add("detail");
    setMinWidth(0);
  }

  void show(BoardRow next) {
    if (next == null || !next.equals(row)) {
      trouble = "";
    }
    row = next;
    getChildren().clear();
    if (row == null) {
      return;
    }
    String kind = Texts.of(row.target() ? "names.board.target" : "names.board.board");
    Label name = Pieces.paragraph(row.name(), "mono", "strong");
    getChildren().addAll(Pieces.label(kind, "quiet"), name);
    fact("names.board.number", row.number());
    fact("names.board.mcu", row.mcu().isEmpty() ? Texts.of("names.board.noMcu") : row.mcu());
    fact("names.board.comment", row.comment());
    fact("names.board.place", row.place());
    String none = Texts.of(row.target() ? "names.board.noBoard" : "names.board.noTarget");
    fact(
        row.target() ? "names.board.boards" : "names.board.targets",
        row.fits().isEmpty() ? none : String.join(", ", row.fits()));
    row.notes().forEach(note -> getChildren().add(noted(note)));
    fills();
    applyCss();
  }

  private void fact(String key, String words) {
    if (!words.isEmpty()) {
      getChildren()
          .add(new VBox(1, Pieces.label(Texts.of(key), "quiet", "small"), Pieces.paragraph(words)));
    }
  }

  private static HBox noted(String note) {
    Label words = Pieces.paragraph(note);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox line = new HBox(8, Mark.WARNING.sign(13), words);
    line.setMinWidth(0);
    return line;
  }

  private void fills() {
    VBox fills = new VBox(3, Pieces.label(Texts.of("names.board.fills"), "strong"));
    boolean changes = false;
    for (Map.Entry<String, String> value : row.values().entrySet()) {
      String now = printer.values().quoted(value.getKey());
      boolean same = now.equals(value.getValue());
      changes |= !same;
      String words = same ? value.getValue() : now + " → " + value.getValue();
      fills.getChildren().add(Pieces.paragraph(PlaceNames.field(value.getKey()) + ": " + words));
    }
    if (row.fits().size() > 1) {
      fills
          .getChildren()
          .add(
              Pieces.paragraph(
                  Texts.of(row.target() ? "names.board.pickBoard" : "names.board.pickTarget"),
                  "quiet"));
    }
    Button use = Pieces.button("names-board-use", Texts.of(useKey()), "act", this::use);
    use.setDisable(!changes);
    use.setAccessibleText(Texts.of(useKey()) + ": " + row.name());
    getChildren().addAll(fills, use);
    if (!trouble.isEmpty()) {
      getChildren().add(Pieces.paragraph(trouble, "error-text"));
    }
  }

  private String useKey() {
    return row.target() ? "names.board.useTarget" : "names.board.use";
  }

  /** Fills the profile from the row in hand. */
  void use() {
    if (row == null) {
      return;
    }
    trouble = desk.fill(Texts.of("names.did.board", row.name()), row.values()).orElse("");
    show(row);
  }
}
