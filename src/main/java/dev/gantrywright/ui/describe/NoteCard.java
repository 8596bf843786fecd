package dev.gantrywright.ui.describe;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.Remark;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A remark in the margin: what was found, the remedy first, then why and from where. */
public final class NoteCard extends HBox {
  /** Height of a folded card, pixels. */
  static final double FOLDED = 30;

  private final Acts does;
  private final VBox body = new VBox();
  private final Label text = Pieces.paragraph("");
  private final Label line = new Label();
  private final FlowPane acts = new FlowPane(8, 6);
  private final Label why = Pieces.paragraph("", "quiet", "small");
  private final Button page;
  private final HBox head;
  private final HBox row;
  private Remark remark;
  private boolean folded;
  private boolean explained;
  private boolean opened;
  private final KnownHeights heights = new KnownHeights();

  /**
   * What a card's buttons do.
   *
   * @param apply applies a fix
   * @param explain lays the margin out again, since the card has grown or shrunk
   * @param page opens the page of the remark's rule; null where remarks have none
   */
  public record Acts(
      BiConsumer<Remark, Remark.Fix> apply, Consumer<Remark> explain, Consumer<Remark> page) {
    /** For remarks that no rule of the book made. */
    public Acts(BiConsumer<Remark, Remark.Fix> apply, Consumer<Remark> explain) {
      this(apply, explain, null);
    }
  }

  NoteCard(Remark remark, Acts does) {
    this.remark = remark;
    this.does = does;
    getStyleClass().add("note-card");
    Region bar = new Region();
    bar.getStyleClass().add("note-bar-" + remark.gravity().word());
    bar.setMinWidth(4);
    body.getStyleClass().add("note-body");
    HBox.setHgrow(body, Priority.ALWAYS);
    body.setMinWidth(0);
    page =
        Pieces.button(
            "note-page", Texts.of("note.page"), "plain", () -> does.page().accept(this.remark));
    page.setAccessibleText(Texts.of("note.pageOf", remark.place()));
    Label word = Pieces.label(remark.gravity().word(), "strong", remark.gravity().word() + "-text");
    head =
        Pieces.row(
            6,
            Mark.of(remark.gravity()).sign(12),
            word,
            Pieces.gap(),
            Pieces.label(remark.place(), "quiet", "small"));
    line.setTextOverrun(OverrunStyle.ELLIPSIS);
    line.setMinWidth(0);
    row = Pieces.row(6, Mark.of(remark.gravity()).sign(12), line);
    row.setAlignment(Pos.CENTER_LEFT);
    acts.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(bar, body);
    setOnMouseClicked(
        click -> {
          if (folded) {
            open();
          }
        });
    setOnKeyPressed(
        key -> {
          if (folded && (key.getCode() == KeyCode.ENTER || key.getCode() == KeyCode.SPACE)) {
            key.consume();
            open();
          }
        });
    words();
    buttons();
    fold(false);
  }

  @Override
  public void requestLayout() {
    // Called by the constructor above this one, too.
    if (heights != null) {
      heights.forget();
    }
    super.requestLayout();
  }

  @Override
  protected double computeMinHeight(double width) {
    return heights.least(width, super::computeMinHeight);
  }

  @Override
  protected double computePrefHeight(double width) {
    return heights.preferred(width, super::computePrefHeight);
  }

  /** Unfolds it for as long as it stands. */
  private void open() {
    opened = true;
    does.explain().accept(remark);
  }

  /** The same remark with other words, such as another figure. */
  void show(Remark next) {
    boolean others = !titles(next).equals(titles(remark));
    remark = next;
    words();
    if (others) {
      buttons();
    }
  }

  private static List<String> titles(Remark remark) {
    return remark.fixes().stream().map(fix -> fix.title() + fix.safety()).toList();
  }

  private void words() {
    text.setText(remark.text());
    line.setText(remark.text());
    why.setText(remark.source());
    setAccessibleText(remark.gravity().word() + ", " + remark.place() + ": " + remark.text());
  }

  private void buttons() {
    acts.getChildren().clear();
    for (int i = 0; i < remark.fixes().size(); i++) {
      acts.getChildren().add(button(i));
    }
    Button explain = new Button(Texts.of("note.why"));
    explain.getStyleClass().add("plain");
    explain.setAccessibleText(Texts.of("note.whyOf", remark.place()));
    explain.setOnAction(
        click -> {
          explained = !explained;
          opened |= explained;
          arrange();
          does.explain().accept(remark);
        });
    acts.getChildren().add(explain);
  }

  private Button button(int fixAt) {
    Remark.Fix fix = remark.fixes().get(fixAt);
    Button button = new Button(fix.title());
    button.setMnemonicParsing(false);
    boolean applicable = fix.safety() != Remark.Safety.SHOW_ONLY;
    button
        .getStyleClass()
        .add(fixAt == 0 && applicable ? "act" : applicable ? "act-second" : "plain");
    button.setWrapText(true);
    button.setDisable(!applicable);
    button.setId("fix-" + remark.slug());
    button.setOnAction(click -> does.apply().accept(remark, remark.fixes().get(fixAt)));
    return button;
  }

  /** One line where the margin is crowded; whole otherwise. */
  void fold(boolean toOneLine) {
    if (toOneLine != folded || body.getChildren().isEmpty()) {
      folded = toOneLine;
      arrange();
    }
  }

  private void arrange() {
    getStyleClass().remove("note-folded");
    if (folded) {
      getStyleClass().add("note-folded");
      body.getChildren().setAll(row);
    } else {
      body.getChildren().setAll(head, text, acts);
      if (explained) {
        body.getChildren().add(why);
        if (does.page() != null) {
          body.getChildren().add(page);
        }
      }
    }
    setFocusTraversable(folded);
    setAccessibleRole(folded ? AccessibleRole.BUTTON : AccessibleRole.TEXT);
    setAccessibleHelp(folded ? Texts.of("note.unfold") : null);
  }

  boolean folded() {
    return folded;
  }

  /** Whether the user opened it, so that it stays whole. */
  boolean opened() {
    return opened;
  }

  Remark remark() {
    return remark;
  }
}
