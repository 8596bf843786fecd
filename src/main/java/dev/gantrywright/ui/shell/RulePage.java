package dev.gantrywright.ui.shell;

import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.RulePages;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.PageText;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The page of a rule, opened from a note: what it looks for, why, and from where. */
public final class RulePage extends VBox {
  private static final double WIDE = 640;
  private static final double HIGH = 560;

  private Label title;
  private VBox text;
  private SheetScroll scroll;
  private Button close;
  private Node returnTo;

  public RulePage() {
    getStyleClass().add("float");
    setMaxSize(WIDE, HIGH);
    setId("rule-page");
    setAlignment(Pos.TOP_LEFT);
    show(false);
  }

  /** Made when it is first asked for: a window that opens has other things to do. */
  private void make() {
    title = Pieces.paragraph("", "section");
    text = new VBox(8);
    scroll = new SheetScroll(text);
    close = Pieces.button("page-close", Texts.of("keys.close"), "act-second", this::close);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, scroll, close);
  }

  private void show(boolean on) {
    setVisible(on);
    setManaged(on);
  }

  /** Opens the page of the rule that made a note. */
  public void open(MarginNote note) {
    if (title == null) {
      make();
    }
    returnTo = getScene() == null ? null : getScene().getFocusOwner();
    Optional<String> page = page(note);
    text.getChildren().clear();
    // The pages begin with their reason: what they speak of is the note's own place.
    String named = page.map(PageText::title).orElse("");
    title.setText(named.isEmpty() ? note.place() + " · " + note.id() : named);
    for (PageText.Piece piece :
        page.map(PageText::pieces).orElseGet(() -> PageText.pieces(Texts.of("page.none")))) {
      text.getChildren().add(node(piece));
    }
    scroll.setVvalue(0);
    show(true);
    close.requestFocus();
  }

  private static Optional<String> page(MarginNote note) {
    for (Family family : Family.values()) {
      if (family.title().equals(note.family())) {
        return RulePages.help(family, note.slug());
      }
    }
    return Optional.empty();
  }

  private static Label node(PageText.Piece piece) {
    return switch (piece.kind()) {
      case HEADING -> Pieces.paragraph(piece.words(), "group-title");
      case POINT -> Pieces.paragraph("•  " + piece.words());
      case CODE -> Pieces.paragraph(piece.words(), "mono", "code");
      case TEXT -> Pieces.paragraph(piece.words());
    };
  }

  public boolean shown() {
    return isVisible();
  }

  public void close() {
    show(false);
    if (returnTo != null) {
      returnTo.requestFocus();
    }
  }
}
