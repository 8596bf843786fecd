package dev.gantrywright.ui.shell;

import dev.gantrywright.link.LogEntry;
import dev.gantrywright.ui.state.Latest;
import dev.gantrywright.ui.state.LinkDesk;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.Live;
import dev.gantrywright.ui.state.LogLines;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.time.Clock;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The serial line: a strip with the last exchange, pulled up the log with search and a command. */
public final class LinePanel extends VBox implements Subscription {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss.SSS");

  /** Rows of the log that are shown; older ones are found by search. */
  private static final int ROWS = 2_000;

  /** Rows that the log has in view where the window is large. */
  private static final int IN_VIEW = 24;

  /** Six rows, pixels. */
  private static final double LEAST = 120;

  /** Of the log in a window of {@link #SMALL} pixels; what a larger one has more is the log's. */
  private static final double USUAL = 190;

  private static final double SMALL = 720;

  private final LinkDesk link;
  private final Clock clock;
  private final LineStrip strip = new LineStrip(this::pull);
  private final ObservableList<String> rows = FXCollections.observableArrayList();
  private final ListView<String> list = new ListView<>(rows);
  private final TextField search = new TextField();
  private final TextField command = new TextField();
  private final Label said = Pieces.label("", "small");
  private final Button arm;
  private final VBox log;
  private final Timeline follow;
  private final CellsAhead ahead;
  private final Subscriptions subscriptions = new Subscriptions();
  private final Latest<Asked, List<String>> reading;
  private long drawn = -1;

  private record Asked(Supplier<List<LogEntry>> log, String search) {}

  /**
   * @param background reads the log, which may be long
   */
  public LinePanel(LinkDesk link, Clock clock, Executor background, Executor view) {
    this.link = link;
    this.clock = clock;
    reading =
        new Latest<>(
            background,
            view,
            asked -> LogLines.of(asked.log().get(), asked.search(), ROWS),
            (asked, lines) -> show(lines),
            (asked, failed) -> said.setText(String.valueOf(failed.getMessage())));
    arm = Pieces.button("arm", Texts.of("line.arm"), "act-second", this::arm);
    Button send = Pieces.button("send", Texts.of("line.send"), "act-second", this::send);
    list.setFixedCellSize(20);
    list.setCellFactory(made -> new Row());
    list.setPrefHeight(USUAL);
    list.setMinHeight(LEAST);
    list.setId("line-log");
    list.setAccessibleText(Texts.of("line.log"));
    list.getStyleClass().add("sheet-list");
    command.setId("line-command");
    command.setPromptText(Texts.of("line.command"));
    command.setAccessibleText(Texts.of("line.command"));
    command.setOnAction(enter -> send());
    search.setPromptText(Texts.of("line.search"));
    search.setAccessibleText(Texts.of("line.search"));
    search.textProperty().addListener((o, before, now) -> redraw());
    log =
        new VBox(
            8,
            list,
            Pieces.row(10, boxed(command, true), send, arm, boxed(search, false)),
            Pieces.paragraph(Texts.of("line.caution"), "small", "quiet"));
    log.getStyleClass().add("strip-log");
    showLog(false);
    getChildren().addAll(log, strip);
    follow = new Timeline(new KeyFrame(Duration.millis(100), tick -> follow()));
    follow.setCycleCount(Timeline.INDEFINITE);
    ahead = new CellsAhead(list, IN_VIEW);
    sceneProperty().addListener((o, before, now) -> makeAhead());
    parentProperty()
        .addListener(
            (o, before, now) -> {
              if (now instanceof Region bench) {
                bench.heightProperty().addListener((p, b, height) -> fit(height.doubleValue()));
              }
            });
    subscriptions.add(link.status().observe(status -> standing(status)));
    subscriptions.add(link.live().listen(this::live));
    subscriptions.add(link.armed().observe(this::armed));
    subscriptions.add(link.said().listen(this::said));
  }

  /** Held as a minimum too: the stage would take the room for what it could show below. */
  private void fit(double height) {
    double own = Math.max(LEAST, USUAL + height - SMALL);
    list.setPrefHeight(own);
    list.setMinHeight(own);
  }

  private static HBox boxed(TextField field, boolean grows) {
    HBox box = new HBox(field);
    box.getStyleClass().add("field-box");
    HBox.setHgrow(field, Priority.ALWAYS);
    if (grows) {
      HBox.setHgrow(box, Priority.ALWAYS);
    }
    return box;
  }

  private void makeAhead() {
    if (getScene() != null && !log.isVisible() && list.lookup(".list-cell") == null) {
      ahead.start();
    }
  }

  /** Pulls the log up, or lets it down again. */
  public void pull() {
    showLog(!log.isVisible());
    if (log.isVisible()) {
      ahead.done();
      redraw();
      command.requestFocus();
      follow.play();
    } else {
      follow.stop();
    }
  }

  private void showLog(boolean on) {
    log.setVisible(on);
    log.setManaged(on);
  }

  private void standing(LinkStatus status) {
    if (!status.held()) {
      strip.quiet();
    } else if (status.kind() != LinkStatus.Kind.UP) {
      strip.show("", status.port(), status.words(), "");
    }
    arm.setDisable(status.kind() != LinkStatus.Kind.UP);
    redraw();
  }

  private void live(Live live) {
    if (link.status().get().kind() != LinkStatus.Kind.UP) {
      return;
    }
    String states =
        live.states().entrySet().stream()
            .sorted(java.util.Map.Entry.comparingByKey())
            .map(e -> PlaceNames.endstop(e.getKey()) + " " + e.getValue().word())
            .collect(Collectors.joining("  ·  "));
    strip.show(
        TIME.format(LocalTime.now(clock)),
        link.query(),
        live.fresh() ? states : Texts.of("line.stale", states),
        String.format(Locale.ROOT, "%.0f Hz · %.1f ms", live.hertz(), live.milliseconds()));
  }

  private void said(String words) {
    strip.show(TIME.format(LocalTime.now(clock)), "", words, "");
    said.setText(words);
  }

  private void armed(boolean on) {
    arm.setText(Texts.of(on ? "line.disarm" : "line.arm"));
  }

  private void arm() {
    link.arm(!link.armed().get());
  }

  private void send() {
    if (!command.getText().isBlank()) {
      link.ask(command.getText().strip());
      command.clear();
    }
  }

  private void follow() {
    if (link.logged() != drawn) {
      redraw();
    }
  }

  private void redraw() {
    if (!log.isVisible()) {
      return;
    }
    drawn = link.logged();
    reading.put(new Asked(link.log(), search.getText()));
  }

  private void show(List<String> lines) {
    rows.setAll(lines);
    list.scrollTo(Math.max(0, lines.size() - 1));
  }

  @Override
  public void close() {
    follow.stop();
    ahead.done();
    reading.forget();
    subscriptions.close();
  }

  private static final class Row extends ListCell<String> {
    Row() {
      getStyleClass().addAll("mono", "code");
    }

    @Override
    protected void updateItem(String line, boolean empty) {
      super.updateItem(line, empty);
      setText(empty ? null : line);
    }
  }
}
