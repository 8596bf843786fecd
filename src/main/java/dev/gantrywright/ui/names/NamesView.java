package dev.gantrywright.ui.names;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Choice;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The names of the folder: fields, boards and build targets, each with what is known of it. */
public final class NamesView extends HBox implements Subscription {
  private static final double SIDE = 330;
  private static final double LEAST_SIDE = 250;

  private final NamesDesk desk;
  private final FieldsPane fields;
  private final BoardsPane boards;
  private final ToggleButton showFields = new ToggleButton();
  private final ToggleButton showBoards = new ToggleButton();
  private final StackPane place = new StackPane();
  private final SheetScroll side = new SheetScroll();
  private final Label summary = Pieces.paragraph("", "quiet");
  private final ProgressBar progress = new ProgressBar(0);
  private final Button learn;
  private final Button cancel;
  private final NameDetail detail;
  private final BoardDetail board;
  private final Subscriptions subscriptions = new Subscriptions();

  public NamesView(PrinterDesk printer, NamesDesk desk) {
    this.desk = desk;
    detail = new NameDetail(printer, desk);
    board = new BoardDetail(printer, desk);
    fields = new FieldsPane(desk, detail);
    boards = new BoardsPane(desk, board);
    learn = Pieces.button("names-learn", Texts.of("names.learn"), "act-second", desk::learn);
    cancel = Pieces.button("names-cancel", Texts.of("names.cancel"), "act-second", desk::cancel);
    progress.setPrefWidth(120);
    progress.setAccessibleText(Texts.of("names.learning"));
    VBox.setVgrow(place, Priority.ALWAYS);
    VBox middle = new VBox(10, heading(), summary, place);
    middle.getStyleClass().add("form");
    middle.setMinWidth(0);
    SheetScroll lists = new SheetScroll(middle);
    lists.setFitToHeight(true);
    lists.setHbarPolicy(SheetScroll.ScrollBarPolicy.NEVER);
    lists.setMinWidth(0);
    HBox.setHgrow(lists, Priority.ALWAYS);
    side.getStyleClass().add("margin-pane");
    side.setMinWidth(LEAST_SIDE);
    side.setPrefWidth(SIDE);
    side.setHbarPolicy(SheetScroll.ScrollBarPolicy.NEVER);
    getChildren().addAll(lists, side);
    show(showFields);
    subscriptions.add(desk.history().listen(history -> refresh()));
    subscriptions.add(printer.values().history().listen(history -> refresh()));
    subscriptions.add(desk.state().observe(state -> refresh()));
    subscriptions.add(desk.said().listen(said -> told()));
    widthProperty()
        .addListener(
            (o, before, now) ->
                side.setPrefWidth(
                    Math.max(LEAST_SIDE, Math.min(SIDE + 90, now.doubleValue() * 0.37))));
    desk.begin();
  }

  private FlowPane heading() {
    Choice choice = new Choice(showFields, showBoards);
    showFields.setId("names-show-fields");
    showBoards.setId("names-show-boards");
    for (ToggleButton each : List.of(showFields, showBoards)) {
      each.setOnAction(click -> show(each));
    }
    FlowPane heading =
        new FlowPane(
            16, 8, Pieces.label(Texts.of("part.names"), "title"), choice, learn, progress, cancel);
    heading.setRowValignment(javafx.geometry.VPos.CENTER);
    return heading;
  }

  private void show(ToggleButton chosen) {
    boolean names = chosen == showFields;
    showFields.setSelected(names);
    showBoards.setSelected(!names);
    Node pane = names ? fields : boards;
    place.getChildren().setAll(pane);
    side.setContent(names ? detail : board);
    side.setVvalue(0);
  }

  private void refresh() {
    NamesState state = desk.state().get();
    boolean learning = state.kind() == NamesState.Kind.LEARNING;
    for (Node node : List.of(progress, cancel)) {
      node.setVisible(learning);
      node.setManaged(learning);
    }
    progress.setProgress(state.share());
    learn.setDisable(learning || state.kind() == NamesState.Kind.NO_FOLDER);
    showFields.setText(Texts.of("names.show.fields"));
    showBoards.setText(
        Texts.of("names.show.boards", desk.map().boards().size(), desk.map().targets().size()));
    fields.refresh();
    boards.refresh();
    told();
  }

  private void told() {
    NamesState state = desk.state().get();
    long asks = desk.rows().stream().filter(row -> row.standing() == NameRow.Standing.ASKS).count();
    String counted = Texts.of("names.summary", desk.map().fields().size(), asks);
    String words =
        switch (state.kind()) {
          case NO_FOLDER -> Texts.of("names.noFolder");
          case LEARNING -> Texts.of("names.learning");
          case STOPPED -> Texts.of("names.stopped");
          case FAILED -> state.words();
          default -> desk.said().get().isEmpty() ? counted : counted + " · " + desk.said().get();
        };
    summary.setText(words);
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
