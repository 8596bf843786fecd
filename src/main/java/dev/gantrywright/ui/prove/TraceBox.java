package dev.gantrywright.ui.prove;

import dev.gantrywright.prove.Stretch;
import dev.gantrywright.ui.draw.TraceStrips;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.TraceLook;
import dev.gantrywright.ui.state.TraceMark;
import dev.gantrywright.ui.state.TraceWords;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.Tones;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The trace: its picture with each strip's figures beside it, and what can be done with it. */
public final class TraceBox extends VBox implements Subscription {
  private static final double STRIP = 34;
  private static final double SECOND = 1e9;
  private static final KeyCodeCombination HOLD = new KeyCodeCombination(KeyCode.F8);
  private static final KeyCodeCombination MARK = new KeyCodeCombination(KeyCode.F9);

  private final TraceLook look;
  private final TraceWords words;
  private final DoubleSupplier hertz;
  private final TraceStrips strips;
  private final VBox names = new VBox();
  private final List<StripWords> figures = new ArrayList<>();
  private final TraceSpans spans;
  private final TraceMarks marks;
  private final Label standing = Pieces.paragraph("", "small");
  private final Label reading = Pieces.paragraph("", "small");
  private final Label said = Pieces.paragraph("", "small");
  private final Label about = Pieces.paragraph(Texts.of("trace.about"), "small", "quiet");
  private final Button hold;
  private final Timeline tick = new Timeline();
  private final Subscriptions subscriptions = new Subscriptions();
  private boolean counting;
  private boolean again;
  private boolean up;

  private record StripWords(VBox box, Label changes, Label bounce) {}

  /**
   * @param profile the profile's file; gives null where it has none
   * @param hertz how often the machine answers
   */
  public TraceBox(TraceLook look, Supplier<Path> profile, DoubleSupplier hertz) {
    super(6);
    this.look = look;
    this.hertz = hertz;
    words = new TraceWords(look);
    strips = new TraceStrips(look);
    strips.setId("trace");
    spans = new TraceSpans(look);
    marks = new TraceMarks(look);
    new TraceHands(strips, look, this::mark, this::read);
    hold = Pieces.button("trace-hold", Texts.of("trace.hold"), "act-second", look::holdOrGoOn);
    Button mark = Pieces.button("trace-mark", Texts.of("trace.mark.now"), "plain", this::mark);
    mark.setAccessibleText(Texts.of("act.mark"));
    Button keep =
        Pieces.button(
            "trace-keep",
            Texts.of("trace.keep"),
            "plain",
            () -> TraceKept.beside(profile.get(), look, said::setText));
    HBox.setHgrow(strips, Priority.ALWAYS);
    strips.setMinWidth(0);
    about.setId("trace-about");
    standing.setId("trace-standing");
    reading.setId("trace-reading");
    said.setId("trace-said");
    FlowPane acts = Section.fields(spans, Pieces.row(8, hold, mark, keep));
    getChildren().addAll(new HBox(8, names, strips), reading, standing, acts, said, marks, about);
    standing.managedProperty().bind(standing.textProperty().isNotEmpty());
    about.managedProperty().bind(about.visibleProperty());
    said.managedProperty().bind(said.textProperty().isNotEmpty());
    tick.getKeyFrames().add(new KeyFrame(Duration.millis(500), now -> ticked()));
    tick.setCycleCount(Timeline.INDEFINITE);
    subscriptions.add(look.held().listen(held -> looked()));
    subscriptions.add(look.span().listen(span -> looked()));
    subscriptions.add(look.cursor().listen(at -> pointed()));
    subscriptions.add(look.marks().observe(history -> marked()));
    sceneProperty().addListener((o, before, now) -> moved(before, now));
  }

  private void moved(Scene before, Scene now) {
    if (before != null) {
      before.getAccelerators().remove(HOLD);
      before.getAccelerators().remove(MARK);
    }
    if (now == null) {
      tick.stop();
    } else {
      now.getAccelerators().put(HOLD, look::holdOrGoOn);
      now.getAccelerators().put(MARK, this::mark);
      tick.play();
      looked();
    }
    strips.inWindow(now != null);
  }

  /**
   * The line came, went, or is another; takes the tones of the theme too.
   *
   * @param up whether more is to come
   */
  public void show(boolean up, Tones tones) {
    this.up = up;
    List<String> ends = look.trace().ends();
    if (!up) {
      look.rest();
    }
    // A line that never opened has nothing to trace.
    boolean any = !ends.isEmpty() && (up || look.trace().count() > 0);
    setVisible(any);
    setManaged(any);
    hold.setDisable(!up);
    strips.setMinHeight(TraceStrips.height(ends.size(), STRIP));
    strips.setMaxHeight(TraceStrips.height(ends.size(), STRIP));
    names.getChildren().clear();
    figures.clear();
    ends.forEach(this::name);
    strips.show(tones);
    looked();
  }

  private void name(String end) {
    Label name = Pieces.label(PlaceNames.endstop(end), "small", "strong");
    Label changes = Pieces.label("", "small", "quiet");
    Label bounce = Pieces.label("", "small", "quiet");
    List.of(name, changes, bounce).forEach(each -> each.setMinWidth(USE_PREF_SIZE));
    VBox box = new VBox(Pieces.row(6, name, changes), bounce);
    box.setAccessibleRole(AccessibleRole.TEXT);
    box.setId("trace-strip-" + end);
    box.setMinHeight(STRIP);
    box.setMaxHeight(STRIP);
    names.getChildren().add(box);
    figures.add(new StripWords(box, changes, bounce));
  }

  /** Which ends disagree now, as bits in the order of the trace. */
  public void wrong(int bits) {
    strips.wrong(bits);
  }

  /** Another moment, another span, or held, or let go. */
  private void looked() {
    boolean held = look.held().get().isPresent();
    hold.setText(Texts.of(held && up ? "trace.goOn" : "trace.hold"));
    Pieces.style(standing, "strong", held);
    spans.show();
    strips.anew();
    refresh();
  }

  private void marked() {
    marks.show();
    strips.flagged();
  }

  private void pointed() {
    strips.flagged();
    read();
  }

  private void mark() {
    look.mark().map(TraceMark::number).ifPresent(marks::edit);
  }

  /** In a held picture only the time that it has been held goes on. */
  private void ticked() {
    if (look.held().get().isPresent()) {
      stand();
    } else {
      refresh();
    }
  }

  /** What changes by itself: figures, how long ago, what is read. */
  private void refresh() {
    stand();
    read();
    marks.kept(look.oldest());
    count();
  }

  private void stand() {
    standing.setText(look.held().get().map(this::held).orElse(""));
  }

  private String held(TraceLook.Held still) {
    long ago = Math.round((look.now() - still.at()) / SECOND);
    String at = look.time(still.at());
    String shows = Texts.of("trace.until", look.time(still.right()));
    String what = up ? Texts.of("trace.held", at, ago) : Texts.of("trace.closed", at, ago);
    return still.right() == still.at() ? what : what + " " + shows;
  }

  private static String running(double hertz) {
    return hertz <= 0
        ? Texts.of("trace.read")
        : Texts.of("trace.running", Math.round(hertz), Math.max(1, Math.round(1000 / hertz)));
  }

  /** The moment in hand; where there is none, what the picture cannot show, or how to read it. */
  private void read() {
    boolean held = look.held().get().isPresent();
    reading.setText(
        strips.reading().isPresent()
            ? words.at(look.shown(), strips.reading().getAsLong())
            : held ? Texts.of("trace.read") : running(hertz.getAsDouble()));
  }

  /** Counts beside the window's thread: five minutes of noise are many changes. */
  private void count() {
    if (counting) {
      again = true;
      return;
    }
    counting = true;
    Stretch shown = look.shown();
    CompletableFuture.supplyAsync(() -> words.strips(shown))
        .whenComplete((told, failed) -> Platform.runLater(() -> counted(shown, told)));
  }

  private void counted(Stretch shown, List<TraceWords.Told> told) {
    counting = false;
    boolean same = shown.ends().equals(look.trace().ends()) && told != null;
    if (same) {
      tellWhatBounceIs(told);
      StringBuilder all = new StringBuilder();
      for (int i = 0; i < told.size(); i++) {
        figures.get(i).changes().setText(told.get(i).changes());
        figures.get(i).bounce().setText(told.get(i).bounce());
        figures.get(i).box().setAccessibleText(told.get(i).told());
        all.append(' ').append(told.get(i).told());
      }
      String span = TraceSpans.words(look.span().get());
      strips.setAccessibleText(
          Texts.of(look.held().get().isPresent() ? "trace.words.held" : "trace.words", span) + all);
    }
    if (again) {
      again = false;
      count();
    }
  }

  /** Said where there is one to be read, and where somebody stops to look. */
  private void tellWhatBounceIs(List<TraceWords.Told> told) {
    about.setVisible(
        look.held().get().isPresent() || told.stream().anyMatch(TraceWords.Told::bounces));
  }

  /** The picture. */
  public TraceStrips strips() {
    return strips;
  }

  @Override
  public void close() {
    tick.stop();
    strips.inWindow(false);
    subscriptions.close();
  }
}
