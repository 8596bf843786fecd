package dev.gantrywright.ui.record;

import dev.gantrywright.app.record.EventWords;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.StateDifference;
import dev.gantrywright.record.Timeline;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tools.jackson.databind.JsonNode;

/** The record of the open printer: as-built sheet, timeline, comparison, the way back. */
public final class RecordBox extends VBox implements Subscription {
  /** Older ones are told by the command line. */
  private static final int MOST = 20;

  private final RecordDesk desk;
  private final Consumer<Path> show;
  private final VBox events = new VBox(2);
  private final VBox comparison = new VBox(6);
  private final Label said = Pieces.paragraph("", "quiet");
  private final Button open;
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param show opens a folder in the system's own window
   */
  public RecordBox(RecordDesk desk, Consumer<Path> show) {
    super(8);
    this.desk = desk;
    this.show = show;
    Button pdf =
        Pieces.button("record-pdf", Texts.of("past.pdf"), "act-second", () -> desk.sheet(".pdf"));
    Button html =
        Pieces.button(
            "record-html", Texts.of("past.html"), "act-second", () -> desk.sheet(".html"));
    open = Pieces.button("record-show", Texts.of("past.show"), "plain", this::showFolder);
    said.setId("record-said");
    getChildren().addAll(heading(pdf, html), Pieces.row(12, said, open), comparison, events);
    subscriptions.add(desk.timeline().observe(this::tell));
    subscriptions.add(desk.compared().observe(this::compare));
    subscriptions.add(desk.said().observe(this::say));
    subscriptions.add(
        desk.written()
            .observe(
                file -> {
                  open.setVisible(file.isPresent());
                  open.setManaged(file.isPresent());
                }));
    desk.look();
  }

  private static HBox heading(Button... sheets) {
    Label title = Pieces.label(Texts.of("past.title"), "section");
    title.setMinWidth(Region.USE_PREF_SIZE);
    FlowPane buttons = new FlowPane(12, 8, sheets);
    buttons.setAlignment(Pos.CENTER_RIGHT);
    HBox.setHgrow(buttons, Priority.ALWAYS);
    return Pieces.row(12, title, buttons);
  }

  private void showFolder() {
    desk.written().get().ifPresent(file -> show.accept(file.toAbsolutePath().getParent()));
  }

  private void say(String line) {
    said.setText(line);
    said.setVisible(!line.isEmpty());
    said.setManaged(!line.isEmpty());
  }

  private void tell(Timeline timeline) {
    events.getChildren().clear();
    if (timeline.events().isEmpty()) {
      events.getChildren().add(Pieces.paragraph(Texts.of("past.empty"), "quiet"));
    }
    timeline
        .unread()
        .forEach(line -> events.getChildren().add(Pieces.paragraph(line.shown(), "error-text")));
    List<Event> newest = timeline.newestFirst();
    newest.stream().limit(MOST).forEach(event -> events.getChildren().add(row(event)));
    if (newest.size() > MOST) {
      events
          .getChildren()
          .add(Pieces.label(Texts.of("past.older", newest.size() - MOST), "quiet", "small"));
    }
  }

  private javafx.scene.Node row(Event event) {
    String time = event.time().toString().substring(0, 16).replace('T', ' ');
    Button compare =
        Pieces.button(
            "record-compare-" + event.number(),
            Texts.of("past.compare"),
            "plain",
            () -> desk.compare(event));
    compare.setAccessibleText(Texts.of("past.compare.words", event.number()));
    Label kind = Pieces.label(event.kind().replace('-', ' '), "strong");
    Label when = Pieces.label(event.by().isEmpty() ? time : time + ", " + event.by(), "quiet");
    for (Region whole : List.of(kind, when, compare)) {
      whole.setMinWidth(Region.USE_PREF_SIZE);
    }
    return new VBox(
        Pieces.row(12, kind, when, Pieces.gap(), compare), Pieces.paragraph(EventWords.of(event)));
  }

  private void compare(Optional<RecordDesk.Compared> compared) {
    comparison.getChildren().clear();
    compared.ifPresent(this::list);
  }

  private void list(RecordDesk.Compared compared) {
    int number = compared.event().number();
    comparison
        .getChildren()
        .add(Pieces.label(Texts.of("past.differ", number, compared.rows().size()), "strong"));
    if (compared.rows().isEmpty()) {
      return;
    }
    GridPane grid = new GridPane();
    grid.setHgap(24);
    grid.setVgap(2);
    int at = 0;
    grid.addRow(
        at++,
        Pieces.label(Texts.of("compare.value"), "quiet", "small"),
        Pieces.label(Texts.of("past.then"), "quiet", "small"),
        Pieces.label(Texts.of("past.now"), "quiet", "small"));
    for (StateDifference.Row row : compared.rows()) {
      grid.addRow(
          at++,
          Pieces.label(PlaceNames.field(row.path()), "quiet"),
          Pieces.label(text(row.left())),
          Pieces.label(text(row.right())));
    }
    comparison
        .getChildren()
        .addAll(
            grid, Pieces.button("record-back", Texts.of("past.back"), "act-second", desk::goBack));
  }

  private static String text(Optional<JsonNode> value) {
    return value
        .map(v -> v.isString() ? v.asString("") : v.toString())
        .orElse(Texts.of("value.none"));
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
