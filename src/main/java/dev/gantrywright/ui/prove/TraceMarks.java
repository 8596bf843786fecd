package dev.gantrywright.ui.prove;

import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.TraceLook;
import dev.gantrywright.ui.state.TraceMark;
import dev.gantrywright.ui.theme.Pieces;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The marks of the trace: number, time, words, and what can be done with each. */
final class TraceMarks extends VBox {
  private final TraceLook look;
  private final Map<Integer, Row> rows = new LinkedHashMap<>();

  private record Row(HBox box, TextField words, Button show) {}

  TraceMarks(TraceLook look) {
    super(6);
    this.look = look;
    setId("trace-marks");
  }

  /** The marks changed, by hand or by undo. */
  void show() {
    List<TraceMark> marks = look.list();
    rows.keySet().removeIf(number -> marks.stream().noneMatch(m -> m.number() == number));
    for (TraceMark mark : marks) {
      Row row = rows.computeIfAbsent(mark.number(), number -> made(mark));
      if (!row.words().getText().equals(mark.text())) {
        row.words().setText(mark.text());
      }
    }
    List<Node> boxes = marks.stream().map(m -> (Node) rows.get(m.number()).box()).toList();
    if (!getChildren().equals(boxes)) {
      getChildren().setAll(boxes);
    }
    setVisible(!boxes.isEmpty());
    setManaged(!boxes.isEmpty());
  }

  /** What is no longer kept cannot be shown. */
  void kept(long first) {
    look.list().forEach(m -> rows.get(m.number()).show().setDisable(m.nanos() < first));
  }

  /** Gives the words of a mark the keyboard. */
  void edit(int number) {
    rows.get(number).words().requestFocus();
  }

  private Row made(TraceMark mark) {
    int number = mark.number();
    Label name = Pieces.label(String.valueOf(number), "strong", "accent-text");
    name.setMinWidth(Region.USE_PREF_SIZE);
    Label time = Pieces.label(look.time(mark.nanos()), "small", "quiet");
    time.setMinWidth(Region.USE_PREF_SIZE);
    TextField words = new TextField(mark.text());
    words.setId("trace-mark-" + number + "-words");
    words.setPromptText(Texts.of("trace.mark.prompt"));
    words.setAccessibleText(Texts.of("trace.mark.words", number, look.time(mark.nanos())));
    words.textProperty().addListener((o, before, now) -> look.name(number, now));
    HBox box = new HBox(words);
    box.getStyleClass().add("field-box");
    box.setMinWidth(72);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox.setHgrow(box, Priority.ALWAYS);
    Button show =
        Pieces.button(
            "trace-mark-" + number + "-show",
            Texts.of("trace.mark.show"),
            "plain",
            () -> look.show(mark.nanos()));
    show.setAccessibleText(Texts.of("trace.mark.show.words", number));
    Button remove =
        Pieces.button(
            "trace-mark-" + number + "-remove",
            Texts.of("trace.mark.remove"),
            "plain",
            () -> look.remove(number));
    remove.setAccessibleText(Texts.of("trace.mark.remove.words", number));
    return new Row(Pieces.row(8, name, time, box, show, remove), words, show);
  }
}
