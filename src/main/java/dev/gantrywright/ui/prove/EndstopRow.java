package dev.gantrywright.ui.prove;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.ui.draw.ContactSign;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.draw.Sketch;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.function.BiConsumer;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

/** One endstop: expected above seen, each as a contact with its word; a mark where they differ. */
final class EndstopRow extends VBox {
  /** Below this width the two states stand under the name. */
  private static final double NARROW = 536;

  private static final double VERDICT = 128;

  private final String end;
  private final Sketch expectedSign = new Sketch();
  private final Sketch seenSign = new Sketch();
  private final Label expectedWord = Pieces.label("");
  private final Label seenWord = Pieces.label("", "strong");
  private final Label verdict = Pieces.label("", "small");
  private final HBox verdictBox = Pieces.row(6);
  private final ToggleButton touch = new ToggleButton(Texts.of("prove.touch"));
  private final VBox pair;
  private final HBox row;
  private String shown = "";

  EndstopRow(String end, BiConsumer<String, Boolean> touched) {
    this.end = end;
    getStyleClass().add("endstop-row");
    Label name = Pieces.label(PlaceNames.endstop(end), "section");
    name.setMinWidth(76);
    pair =
        new VBox(
            4,
            line(Texts.of("prove.expected"), expectedSign, expectedWord),
            line(Texts.of("prove.seen"), seenSign, seenWord));
    verdictBox.setMinWidth(VERDICT);
    touch.getStyleClass().add("touch");
    touch.setId("touch-" + end);
    touch.setMinWidth(USE_PREF_SIZE);
    touch.setAccessibleText(Texts.of("prove.touch.words", PlaceNames.endstop(end)));
    touch.setOnAction(click -> touched.accept(end, touch.isSelected()));
    row = Pieces.row(16, name, pair, verdictBox, Pieces.gap(), touch);
    getChildren().add(row);
    widthProperty().addListener((o, before, now) -> fit(now.doubleValue() < NARROW));
  }

  private void fit(boolean narrow) {
    boolean now = pair.getParent() == this;
    if (now != narrow && narrow) {
      row.getChildren().remove(pair);
      getChildren().add(pair);
    } else if (now != narrow) {
      getChildren().remove(pair);
      row.getChildren().add(1, pair);
    }
    verdictBox.setMinWidth(narrow ? USE_PREF_SIZE : VERDICT);
  }

  private static HBox line(String what, Sketch sign, Label word) {
    Label label = Pieces.label(what, "quiet", "small");
    label.setMinWidth(64);
    Pane room = new Pane(sign);
    room.setMinSize(ContactSign.LENGTH + 4, 20);
    room.setPrefSize(ContactSign.LENGTH + 4, 20);
    word.setMinWidth(76);
    return Pieces.row(8, label, room, word);
  }

  void show(Contact contact, ContactState expected, ContactState seen, boolean fresh) {
    String now = contact + " " + expected + " " + seen + " " + fresh;
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    boolean known = seen != ContactState.UNKNOWN;
    boolean agrees = seen == expected;
    draw(expectedSign, contact, expected, "fine");
    draw(seenSign, contact, seen, !known || !fresh ? "faint" : agrees ? "live" : "wrong");
    expectedWord.setText(expected.word());
    seenWord.setText(seen.word());
    // What was seen before the line fell silent says nothing of now.
    boolean judged = known && fresh;
    String words =
        Texts.of(
            !known
                ? "prove.unknown"
                : !fresh ? "prove.stale" : agrees ? "prove.agrees" : "prove.differs");
    verdict.setText(words);
    Mark mark = !judged ? Mark.OPEN : agrees ? Mark.SETTLED : Mark.ERROR;
    verdict.getStyleClass().remove("error-text");
    if (judged && !agrees) {
      verdict.getStyleClass().add("error-text");
    }
    verdictBox.getChildren().setAll(mark.sign(12), verdict);
    setAccessibleText(
        Texts.of("prove.row", PlaceNames.endstop(end), expected.word(), seen.word(), words));
  }

  private static void draw(Sketch sketch, Contact contact, ContactState state, String style) {
    sketch.clear();
    ContactSign.across(sketch, 0, 13, contact, ContactSign.conducts(contact, state), style);
  }

  void touched(boolean on) {
    touch.setSelected(on);
  }
}
