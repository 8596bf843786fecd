package dev.gantrywright.ui.prove;

import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.TouchReport;
import dev.gantrywright.prove.TouchResult;
import dev.gantrywright.prove.TouchTest;
import dev.gantrywright.prove.TouchVerdict;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.Endstops;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The touch test: asks for each fitted endstop in turn and goes on by itself. */
final class TouchPanel extends Section {
  /** Ten milliseconds between questions: contact bounce is shorter than a hand is quick. */
  private static final double HERTZ = 100;

  private final PrinterDesk desk;
  private final Button begin;
  private final Button end;
  private final Button skip;
  private final Label prompt = Pieces.label("", "title");
  private final VBox results = new VBox(6);
  private final Timeline follow;
  private TouchTest test;

  TouchPanel(PrinterDesk desk) {
    super("touch.title", "touch.about");
    this.desk = desk;
    begin = Pieces.button("touch-begin", Texts.of("touch.begin"), "act", this::begin);
    end = Pieces.button("touch-end", Texts.of("touch.end"), "act-second", this::finish);
    skip = Pieces.button("touch-skip", Texts.of("touch.skip"), "act-second", this::skip);
    prompt.setId("touch-prompt");
    results.setId("touch-results");
    getChildren()
        .addAll(
            caution("help.caution", "touch.caution"),
            Pieces.row(12, begin, skip, end),
            prompt,
            results);
    follow = new Timeline(new KeyFrame(Duration.millis(100), tick -> look()));
    follow.setCycleCount(Timeline.INDEFINITE);
    standing();
  }

  /** The line came or went. */
  void standing() {
    boolean up = desk.link().status().get().kind() == LinkStatus.Kind.UP;
    if (!desk.link().status().get().held() && test != null) {
      finish();
    }
    begin.setDisable(!up);
    show(begin, test == null);
    show(skip, test != null);
    show(end, test != null);
    show(prompt, test != null);
  }

  private void begin() {
    List<String> ends = Endstops.fitted(desk.profile());
    Map<String, Boolean> inverted = new HashMap<>();
    ends.forEach(
        each ->
            inverted.put(
                each, Boolean.TRUE.equals(desk.profile().endstops().get(each).inverted())));
    TouchTest fresh = new TouchTest(ends, inverted, TouchTest.Patience.standard());
    test = fresh;
    results.getChildren().clear();
    desk.link().tap(fresh::add);
    desk.link().pace(HERTZ);
    follow.play();
    standing();
    look();
  }

  private void skip() {
    if (test != null) {
      test.skip();
    }
  }

  private void look() {
    if (test == null) {
      return;
    }
    // Asked first: samples come in on another thread, and the last press may end between two calls.
    if (test.done()) {
      finish();
      return;
    }
    prompt.setText(
        test.asked()
            .map(each -> Texts.of("touch.press", PlaceNames.endstop(each)))
            .orElse(Texts.of("touch.hands")));
  }

  private void finish() {
    TouchReport report = test.report();
    String port = desk.link().status().get().line();
    test = null;
    prompt.setText("");
    follow.stop();
    desk.link().tap(sample -> {});
    desk.link().pace(0);
    standing();
    list(report);
    keep(desk.printer().file(), desk.profile(), port, report);
  }

  private void keep(Path file, PrinterProfile profile, String port, TouchReport report) {
    boolean any = report.results().stream().anyMatch(r -> r.verdict() != TouchVerdict.NOT_TESTED);
    if (any) {
      Kept.in(
          desk,
          () -> PrinterHistory.beside(file).touchTested(profile, port, report, Optional.empty()));
    }
  }

  private void list(TouchReport report) {
    for (TouchResult result : report.results()) {
      Mark mark =
          switch (result.verdict()) {
            case WORKS -> Mark.SETTLED;
            case NOT_TESTED -> Mark.OPEN;
            case BOUNCING, NOISY -> Mark.WARNING;
            default -> Mark.ERROR;
          };
      String other =
          result.other().isEmpty() ? "" : " (" + PlaceNames.endstop(result.other()) + ")";
      Label words =
          Pieces.label(
              PlaceNames.endstop(result.end()) + " " + result.verdict().phrase() + other, "strong");
      words.setId("touch-result-" + result.end());
      results.getChildren().add(Pieces.row(8, mark.sign(12), words));
      if (!result.advice().isEmpty()) {
        results.getChildren().add(Pieces.paragraph(result.advice(), "small"));
      }
      result.remedy().ifPresent(remedy -> results.getChildren().add(offer(result, remedy)));
    }
  }

  private Button offer(TouchResult result, TouchResult.Remedy remedy) {
    Button apply =
        Pieces.button(
            "touch-fix-" + result.end(),
            Texts.of("touch.set", PlaceNames.field(remedy.path()), remedy.value()),
            "act-second",
            () -> {});
    apply.setOnAction(
        click -> {
          boolean truth = remedy.value().equals("true") || remedy.value().equals("false");
          Object value = truth ? Boolean.valueOf(remedy.value()) : remedy.value();
          desk.values().edit(remedy.path(), value).ifPresent(desk.link().said()::set);
          apply.setDisable(true);
        });
    return apply;
  }
}
