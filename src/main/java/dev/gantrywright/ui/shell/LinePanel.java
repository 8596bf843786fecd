package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.LinkDesk;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.Live;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The serial line: a strip with the last exchange, pulled up the log with search and a command. */
public final class LinePanel extends VBox implements Subscription {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss.SSS");

  /** Three rows, pixels. */
  private static final double LEAST = 60;

  /** Six rows: the log has them where the stage still has its own least beside them. */
  private static final double FEW = 120;

  /** Header, route, stage, strip and what stands below the log's rows, pixels. */
  private static final double OTHERS = 396;

  /** Of the log in a window of {@link #SMALL} pixels; what a larger one has more is the log's. */
  private static final double USUAL = 190;

  private static final double SMALL = 720;

  private final LinkDesk link;
  private final Clock clock;
  private final LineStrip strip = new LineStrip(this::pull);
  private final LogPane pane;
  private final TextField command = new TextField();
  private final Button arm;
  private final VBox log;
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param profile the printer's file, beside which a log is kept
   * @param background reads the log, which may be long
   */
  public LinePanel(
      LinkDesk link,
      Supplier<Optional<Path>> profile,
      Clock clock,
      Executor background,
      Executor view) {
    this.link = link;
    this.clock = clock;
    pane = new LogPane(link, profile, background, view);
    arm = Pieces.button("arm", Texts.of("line.arm"), "act-second", this::arm);
    Button send = Pieces.button("send", Texts.of("line.send"), "act-second", this::send);
    command.setId("line-command");
    command.setPromptText(Texts.of("line.command"));
    command.setAccessibleText(Texts.of("line.command"));
    command.setOnAction(enter -> send());
    log =
        new VBox(
            8,
            pane.list(),
            Pieces.row(
                10,
                boxed(command, true),
                send,
                arm,
                boxed(pane.search(), false),
                pane.saveButton()),
            pane.note(),
            Pieces.paragraph(Texts.of("line.caution"), "small", "quiet"));
    log.getStyleClass().add("strip-log");
    VBox.setVgrow(pane.list(), Priority.ALWAYS);
    VBox.setVgrow(log, Priority.ALWAYS);
    strip.follow(log.visibleProperty());
    showLog(false);
    getChildren().addAll(log, strip);
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
    double few = Math.min(FEW, height - OTHERS);
    double own = Math.max(LEAST, Math.max(few, USUAL + height - SMALL));
    pane.list().setPrefHeight(own);
    pane.list().setMinHeight(own);
  }

  /** Whether the log stands above the strip. */
  public ReadOnlyBooleanProperty pulled() {
    return log.visibleProperty();
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
    if (getScene() != null) {
      pane.makeAhead();
    }
  }

  /** Pulls the log up, or lets it down again. */
  public void pull() {
    showLog(!log.isVisible());
    pane.open(log.isVisible());
    if (log.isVisible()) {
      command.requestFocus();
    }
  }

  private void showLog(boolean on) {
    log.setManaged(on);
    log.setVisible(on);
  }

  private void standing(LinkStatus status) {
    if (!status.held()) {
      strip.quiet();
    } else if (status.kind() != LinkStatus.Kind.UP) {
      strip.show("", status.port(), status.words(), "");
    }
    arm.setDisable(status.kind() != LinkStatus.Kind.UP);
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

  @Override
  public void close() {
    pane.close();
    subscriptions.close();
  }
}
