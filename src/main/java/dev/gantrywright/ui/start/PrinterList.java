package dev.gantrywright.ui.start;

import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The printers that answer what is typed, and two of them beside each other. */
final class PrinterList extends VBox {
  private final StartView.Acts acts;
  private final VBox list = new VBox();
  private final TextField search = new TextField();
  private final Label none = Pieces.paragraph("", "quiet");
  private final Button compare;
  private final VBox comparison = new VBox();
  private final List<PrinterRow> rows = new ArrayList<>();
  private final List<PrinterCard> cards = new ArrayList<>();
  private List<PrinterCard> printers = List.of();

  PrinterList(StartView.Acts acts) {
    super(16);
    this.acts = acts;
    search.setId("start-search");
    search.setPromptText(Texts.of("start.search"));
    search.setAccessibleText(Texts.of("start.search"));
    search.textProperty().addListener((o, before, now) -> refresh());
    HBox box = new HBox(search);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(search, Priority.ALWAYS);
    box.setPrefWidth(280);
    compare =
        Pieces.button("start-compare", Texts.of("start.compare"), "act-second", this::compare);
    SheetScroll scroll = new SheetScroll(new VBox(list, comparison));
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(Pieces.row(12, box, compare), scroll);
  }

  void show(List<PrinterCard> all) {
    printers = all;
    refresh();
  }

  private void refresh() {
    rows.clear();
    cards.clear();
    list.getChildren().clear();
    String wanted = search.getText().toLowerCase(Locale.ROOT).strip();
    for (PrinterCard card : printers) {
      String all = (card.title() + " " + card.board() + " " + card.file()).toLowerCase(Locale.ROOT);
      if (all.contains(wanted)) {
        cards.add(card);
        rows.add(
            new PrinterRow(card, new PrinterRow.Acts(acts::open, acts::duplicate, this::chosen)));
      }
    }
    list.getChildren().addAll(rows);
    if (rows.isEmpty()) {
      none.setText(Texts.of("start.none", search.getText().strip()));
      list.getChildren().add(none);
    }
    chosen();
  }

  private void chosen() {
    compare.setDisable(rows.stream().filter(PrinterRow::chosen).count() != 2);
  }

  private void compare() {
    List<PrinterCard> two = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).chosen()) {
        two.add(cards.get(i));
      }
    }
    comparison.getChildren().setAll(new Comparison(two.get(0), two.get(1)));
  }
}
