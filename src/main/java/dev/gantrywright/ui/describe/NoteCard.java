package dev.gantrywright.ui.describe;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.Remark;
import dev.gantrywright.ui.state.Texts;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A remark in the margin: what was found, the remedy first, then why and from where. */
public final class NoteCard extends HBox {
  private final Remark remark;
  private final VBox body = new VBox();
  private final Label text = new Label();
  private final FlowPane acts = new FlowPane(8, 6);
  private final Label why = new Label();
  private boolean folded;
  private boolean explained;

  /** What a card's buttons do. */
  public record Acts(BiConsumer<Remark, Remark.Fix> apply, Consumer<Remark> explain) {}

  NoteCard(Remark remark, Acts does) {
    this.remark = remark;
    getStyleClass().add("note-card");
    Region bar = new Region();
    bar.getStyleClass().add("note-bar-" + remark.gravity().word());
    bar.setMinWidth(4);
    body.getStyleClass().add("note-body");
    HBox.setHgrow(body, Priority.ALWAYS);
    text.setText(remark.text());
    text.setWrapText(true);
    text.setMinHeight(Region.USE_PREF_SIZE);
    why.setText(remark.source());
    why.setWrapText(true);
    why.getStyleClass().addAll("quiet", "small");
    why.setMinHeight(Region.USE_PREF_SIZE);
    boolean first = true;
    for (Remark.Fix fix : remark.fixes()) {
      acts.getChildren().add(button(fix, first, does));
      first = false;
    }
    acts.setAlignment(Pos.CENTER_LEFT);
    Button explain = new Button(Texts.of("note.why"));
    explain.getStyleClass().add("plain");
    explain.setAccessibleText(Texts.of("note.whyOf", remark.place()));
    explain.setOnAction(
        click -> {
          explained = !explained;
          fold(folded);
          does.explain().accept(remark);
        });
    acts.getChildren().add(explain);
    getChildren().addAll(bar, body);
    setAccessibleText(remark.gravity().word() + ", " + remark.place() + ": " + remark.text());
    fold(false);
  }

  private Button button(Remark.Fix fix, boolean first, Acts does) {
    Button button = new Button(fix.title());
    button.setMnemonicParsing(false);
    boolean applicable = fix.safety() != Remark.Safety.SHOW_ONLY;
    button.getStyleClass().add(first && applicable ? "act" : applicable ? "act-second" : "plain");
    button.setWrapText(true);
    button.setDisable(!applicable);
    button.setId("fix-" + remark.slug());
    button.setOnAction(click -> does.apply().accept(remark, fix));
    return button;
  }

  /** One line where the margin is crowded; whole otherwise. */
  void fold(boolean toOneLine) {
    folded = toOneLine;
    getStyleClass().remove("note-folded");
    if (toOneLine) {
      getStyleClass().add("note-folded");
      Label line = new Label(remark.text());
      HBox row = new HBox(6, Mark.of(remark.gravity()).sign(12), line);
      row.setAlignment(Pos.CENTER_LEFT);
      body.getChildren().setAll(row);
      return;
    }
    Label word = new Label(remark.gravity().word());
    word.getStyleClass().addAll("strong", remark.gravity().word() + "-text");
    Label place = new Label(remark.place());
    place.getStyleClass().addAll("quiet", "small");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox head = new HBox(6, Mark.of(remark.gravity()).sign(12), word, gap, place);
    head.setAlignment(Pos.CENTER_LEFT);
    body.getChildren().setAll(head, text, acts);
    if (explained) {
      body.getChildren().add(why);
    }
  }

  boolean folded() {
    return folded;
  }

  Remark remark() {
    return remark;
  }
}
