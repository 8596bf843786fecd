package dev.gantrywright.ui.start;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.Workshop;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The start page: every printer with its state, search, duplicate, compare. */
public final class StartView extends VBox implements Subscription {
  private final Workshop workshop;
  private final Acts acts;
  private final Label trouble = Pieces.paragraph("", "error-text");
  private final Label empty = Pieces.paragraph("", "quiet");
  private final Subscriptions subscriptions = new Subscriptions();

  /** The list with what belongs to it; made when there is a printer to list. */
  private PrinterList list;

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
    Button profile =
        Pieces.button("start-profile", Texts.of("start.profile"), "act-second", acts::openProfile);
    Button folder =
        Pieces.button("start-folder", Texts.of("start.folder"), "act", acts::openFolder);
    trouble.setManaged(false);
    trouble.setGraphic(Mark.ERROR.sign(12));
    trouble.setGraphicTextGap(8);
    trouble.setVisible(false);
    getChildren().addAll(heading(profile, folder), trouble, empty);
    subscriptions.add(workshop.printers().observe(this::show));
    subscriptions.add(workshop.trouble().observe(this::trouble));
    subscriptions.add(workshop.busy().observe(busy -> empty()));
  }

  private static HBox heading(Button... acts) {
    VBox title =
        new VBox(
            4,
            Pieces.label(Texts.of("start.title"), "grand"),
            Pieces.paragraph(Texts.of("start.about"), "quiet"));
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox heading = Pieces.row(16, title);
    heading.getChildren().addAll(acts);
    return heading;
  }

  private void trouble(String words) {
    trouble.setText(words);
    trouble.setManaged(!words.isEmpty());
    trouble.setVisible(!words.isEmpty());
  }

  /** A window that opens knows no printer yet: search, list and comparing come with the first. */
  private void show(List<PrinterCard> printers) {
    if (list == null && !printers.isEmpty()) {
      list = new PrinterList(acts);
      VBox.setVgrow(list, Priority.ALWAYS);
      getChildren().add(list);
    }
    if (list != null) {
      list.show(printers);
      list.setVisible(!printers.isEmpty());
      list.setManaged(!printers.isEmpty());
    }
    empty();
  }

  private void empty() {
    boolean none = workshop.printers().get().isEmpty();
    empty.setText(Texts.of(workshop.busy().get() ? "start.busy" : "start.empty"));
    empty.setVisible(none);
    empty.setManaged(none);
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
