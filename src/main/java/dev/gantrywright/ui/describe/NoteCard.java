package dev.gantrywright.ui.describe;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.MarginNote;
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
import javafx.scene.text.TextAlignment;

/** A note in the margin: what was found, the remedy first, then why and from where. */
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
  private MarginNote note;
  private boolean folded;
  private boolean explained;
  private boolean opened;
  private final KnownHeights heights = new KnownHeights();

  /**
   * What a card's buttons do.
   *
   * @param apply applies a fix
   * @param explain lays the margin out again, since the card has grown or shrunk
   * @param page opens the page of the note's rule; null where notes have none
   */
  public record Acts(
      BiConsumer<MarginNote, MarginNote.Fix> apply,
      Consumer<MarginNote> explain,
      Consumer<MarginNote> page) {
    /** For notes that no rule of the book made. */
    public Acts(BiConsumer<MarginNote, MarginNote.Fix> apply, Consumer<MarginNote> explain) {
      this(apply, explain, null);
    }
  }

  NoteCard(MarginNote note, Acts does) {
    this.note = note;
    this.does = does;
    getStyleClass().add("note-card");
    Region bar = new Region();
    bar.getStyleClass().add("note-bar-" + note.gravity().word());
    bar.setMinWidth(4);
    body.getStyleClass().add("note-body");
    HBox.setHgrow(body, Priority.ALWAYS);
    body.setMinWidth(0);
    page =
        Pieces.button(
            "note-page", Texts.of("note.page"), "plain", () -> does.page().accept(this.note));
    page.getStyleClass().add("flush");
    page.setAccessibleText(Texts.of("note.pageOf", note.place()));
    Label word = Pieces.label(note.gravity().word(), "strong", note.gravity().word() + "-text");
    word.setMinWidth(USE_PREF_SIZE);
    Label place = Pieces.paragraph(note.place(), "quiet", "small");
    place.setTextAlignment(TextAlignment.RIGHT);
    head = Pieces.row(6, Mark.of(note.gravity()).sign(12), word, Pieces.gap(), place);
    line.setTextOverrun(OverrunStyle.ELLIPSIS);
    line.setMinWidth(0);
    row = Pieces.row(6, Mark.of(note.gravity()).sign(12), line);
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
    does.explain().accept(note);
  }

  /** The same note with other words, such as another figure. */
  void show(MarginNote next) {
    boolean others = !titles(next).equals(titles(note));
    note = next;
    words();
    if (others) {
      buttons();
    }
  }

  private static List<String> titles(MarginNote note) {
    return note.fixes().stream().map(fix -> fix.title() + fix.safety()).toList();
  }

  private void words() {
    text.setText(note.text());
    line.setText(note.text());
    why.setText(note.source());
    setAccessibleText(note.gravity().word() + ", " + note.place() + ": " + note.text());
  }

  private void buttons() {
    acts.getChildren().clear();
    for (int i = 0; i < note.fixes().size(); i++) {
      MarginNote.Fix fix = note.fixes().get(i);
      // What only a hand can do is said, not offered.
      acts.getChildren()
          .add(
              fix.safety() == MarginNote.Safety.SHOW_ONLY
                  ? Pieces.paragraph(fix.title(), "quiet")
                  : button(i));
    }
    Button explain = new Button(Texts.of("note.why"));
    explain.getStyleClass().addAll("plain", "flush");
    explain.setAccessibleText(Texts.of("note.whyOf", note.place()));
    explain.setOnAction(
        click -> {
          explained = !explained;
          opened |= explained;
          arrange();
          does.explain().accept(note);
        });
    acts.getChildren().add(explain);
  }

  private Button button(int fixAt) {
    MarginNote.Fix fix = note.fixes().get(fixAt);
    Button button = new Button(fix.title());
    button.setMnemonicParsing(false);
    button.getStyleClass().add(fixAt == 0 ? "act" : "act-second");
    button.setWrapText(true);
    button.setId("fix-" + note.slug());
    button.setOnAction(click -> does.apply().accept(note, note.fixes().get(fixAt)));
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

  MarginNote note() {
    return note;
  }
}
