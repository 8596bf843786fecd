package dev.gantrywright.ui.shell;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.ui.state.Latest;
import dev.gantrywright.ui.state.LinkDesk;
import dev.gantrywright.ui.state.LogFollower;
import dev.gantrywright.ui.state.LogRows;
import dev.gantrywright.ui.state.LogSaving;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.CodeCell;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.util.Duration;

/**
 * The log of the line: its newest lines or those found, and what keeps it. It follows the line
 * while its end is in view; who scrolls back to read is not carried away.
 */
final class LogPane implements AutoCloseable {
  /** Rows that are shown; older ones are found by search. */
  private static final int ROWS = 2_000;

  /** Rows that are in view where the window is large. */
  private static final int IN_VIEW = 24;

  private static final double ROW = 20;

  private final LinkDesk link;
  private final Supplier<Optional<Path>> profile;
  private final RowList rows = new RowList();
  private final ListView<String> list = new ListView<>(rows);
  private final TextField search = new TextField();
  private final Label note = Pieces.paragraph("", "small", "quiet");
  private final Button save;
  private final LogSaving saving;
  private final Timeline follow;
  private final CellsAhead ahead = new CellsAhead(list, rows::show, SampleRows.of(IN_VIEW));
  private final Latest<LogFollower, LogFollower.Look> reading;
  private final Subscriptions subscriptions = new Subscriptions();
  private ByteLog followed;
  private LogFollower follower;
  private LogFollower.Look shown = new LogFollower.Look(LogRows.NONE, 1, -1);
  private boolean atEnd = true;
  private boolean open;
  private String trouble = "";

  /**
   * @param profile the printer's file, beside which a log is kept; empty while it has none
   * @param background reads the log, which may be long
   */
  LogPane(LinkDesk link, Supplier<Optional<Path>> profile, Executor background, Executor view) {
    this.link = link;
    this.profile = profile;
    saving = new LogSaving(background, view);
    reading =
        new Latest<>(
            background,
            view,
            LogFollower::look,
            this::show,
            (asked, failed) -> trouble = String.valueOf(failed.getMessage()));
    save = Pieces.button("line-save", Texts.of("line.save"), "act-second", this::save);
    list.setFixedCellSize(ROW);
    list.setCellFactory(made -> new CodeCell());
    list.setId("line-log");
    list.setAccessibleText(Texts.of("line.log"));
    list.getStyleClass().add("sheet-list");
    list.addEventFilter(ScrollEvent.SCROLL, this::scrolled);
    list.addEventFilter(MouseEvent.MOUSE_RELEASED, this::scrolled);
    list.addEventFilter(KeyEvent.KEY_PRESSED, this::scrolled);
    search.setId("line-search");
    search.setPromptText(Texts.of("line.search"));
    search.setAccessibleText(Texts.of("line.search"));
    search.textProperty().addListener((o, before, now) -> restart());
    note.setId("line-note");
    // Room only while there is something to say.
    note.managedProperty().bind(note.textProperty().isNotEmpty());
    follow = new Timeline(new KeyFrame(Duration.millis(100), tick -> follow()));
    follow.setCycleCount(Timeline.INDEFINITE);
    subscriptions.add(
        saving
            .busy()
            .observe(busy -> save.setText(Texts.of(busy ? "line.save.stop" : "line.save"))));
    subscriptions.add(saving.said().observe(said -> tell()));
  }

  ListView<String> list() {
    return list;
  }

  TextField search() {
    return search;
  }

  Button saveButton() {
    return save;
  }

  /** What is worth saying of the log. */
  Label note() {
    return note;
  }

  /** Makes the rows' cells while nobody looks. */
  void makeAhead() {
    if (!open && list.lookup(".list-cell") == null) {
      ahead.start();
    }
  }

  void open(boolean on) {
    open = on;
    if (on) {
      ahead.done();
      atEnd = true;
      follow.play();
      follow();
    } else {
      follow.stop();
    }
  }

  private void restart() {
    follower = null;
    atEnd = true;
    follow();
  }

  private void follow() {
    ByteLog log = link.log().orElse(null);
    save.setDisable(!saving.busy().get() && (log == null || log.entries() == 0));
    if (!open || log == null) {
      return;
    }
    if (log != followed || follower == null) {
      followed = log;
      follower = new LogFollower(log, search.getText(), ROWS);
      reading.put(follower);
    } else if (!reading.busy().get()
        && atEnd
        && (shown.more() || shown.number() != log.entries())) {
      reading.put(follower);
    }
    tell();
  }

  private void show(LogFollower asked, LogFollower.Look look) {
    trouble = "";
    shown = look;
    rows.show(look.rows());
    list.scrollTo(Math.max(0, rows.size() - 1));
    tell();
  }

  private void tell() {
    String words =
        !trouble.isEmpty()
            ? trouble
            : saving.busy().get()
                ? saving.said().get()
                : shown.more()
                    ? Texts.of("line.searched", (int) (100 * shown.share()))
                    : !atEnd && followed != null && shown.number() != followed.entries()
                        ? Texts.of("line.behind")
                        : saving.said().get().isEmpty() && followed != null
                            ? followed.trouble().orElse("")
                            : saving.said().get();
    note.setText(words);
  }

  /** Whoever scrolls away from the end wants to read: what is in view then stays. */
  private void scrolled(javafx.event.Event by) {
    Platform.runLater(
        () -> {
          list.layout();
          atEnd = endInView();
          follow();
        });
  }

  private boolean endInView() {
    if (!(list.lookup(".virtual-flow") instanceof VirtualFlow<?> flow)) {
      return true;
    }
    var last = flow.getLastVisibleCell();
    return last == null || last.getIndex() >= rows.size() - 1;
  }

  private void save() {
    Optional<Path> file = profile.get();
    Optional<ByteLog> log = link.log();
    if (file.isEmpty()) {
      saving.said().set(Texts.of("line.noFile"));
    } else if (log.isPresent()) {
      saving.keep(file.get(), log.get());
    }
  }

  @Override
  public void close() {
    follow.stop();
    ahead.done();
    reading.forget();
    subscriptions.close();
  }
}
