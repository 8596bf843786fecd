package dev.gantrywright.ui.start;

import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.Workshop;
import dev.gantrywright.ui.theme.Pieces;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The start page: every printer with its state, search, duplicate, compare. */
public final class StartView extends VBox implements Subscription {
  private final Workshop workshop;
  private final Acts acts;
  private final VBox list = new VBox();
  private final TextField search = new TextField();
  private final Label trouble = Pieces.paragraph("", "error-text");
  private final Label empty = Pieces.paragraph(Texts.of("start.empty"), "quiet");
  private final Button compare;
  private final VBox comparison = new VBox();
  private final List<PrinterRow> rows = new ArrayList<>();
  private final List<PrinterCard> cards = new ArrayList<>();
  private final Subscriptions subscriptions = new Subscriptions();

  /** What the start page leads to. */
  public interface Acts {
    void open(PrinterCard card);

    void duplicate(PrinterCard card);

    void openProfile();

    void openFolder();
  }

  public StartView(Workshop workshop, Acts acts) {
    super(16);
    this.workshop = workshop;
    this.acts = acts;
    getStyleClass().addAll("bench", "start");
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
    Button profile =
        Pieces.button("start-profile", Texts.of("start.profile"), "act-second", acts::openProfile);
    Button folder =
        Pieces.button("start-folder", Texts.of("start.folder"), "act", acts::openFolder);
    ScrollPane scroll = new ScrollPane(new VBox(list, comparison));
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("sheet-scroll");
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren()
        .addAll(
            Pieces.row(
                16,
                new VBox(
                    4,
                    Pieces.label(Texts.of("start.title"), "grand"),
                    Pieces.label(Texts.of("start.about"), "quiet")),
                Pieces.gap(),
                profile,
                folder),
            Pieces.row(12, box, compare, trouble),
            scroll);
    subscriptions.add(workshop.printers().observe(printers -> refresh()));
    subscriptions.add(workshop.trouble().observe(trouble::setText));
    subscriptions.add(
        workshop
            .busy()
            .observe(busy -> empty.setText(Texts.of(busy ? "start.busy" : "start.empty"))));
    chosen();
  }

  private void refresh() {
    rows.clear();
    cards.clear();
    list.getChildren().clear();
    String wanted = search.getText().toLowerCase(Locale.ROOT).strip();
    for (PrinterCard card : workshop.printers().get()) {
      String all = (card.title() + " " + card.board() + " " + card.file()).toLowerCase(Locale.ROOT);
      if (all.contains(wanted)) {
        cards.add(card);
        rows.add(
            new PrinterRow(card, new PrinterRow.Acts(acts::open, acts::duplicate, this::chosen)));
      }
    }
    list.getChildren().addAll(rows);
    if (rows.isEmpty()) {
      list.getChildren().add(empty);
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

  @Override
  public void close() {
    subscriptions.close();
  }
}
