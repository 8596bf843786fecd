package dev.gantrywright.ui.write;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.DiffRow;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/**
 * One row: a line that stays runs through; one that changes forks into what stands in the folder
 * and what will stand there, with what causes it in the margin, or in a row below where there is no
 * room for a margin.
 */
final class DiffCell extends ListCell<DiffRow> {
  static final double HEIGHT = 24;
  private static final double NUMBER = 48;
  private static final double CAUSE = 250;

  /** A list that is narrower has no room for a margin beside two branches, pixels. */
  private static final double LEAST_FOR_MARGIN = 790;

  /** Of the type in a tip, pixels. */
  private static final double TIP = 12;

  /** Between the two branches of a fork. */
  private static final double FORK = 28;

  private final Label number = Pieces.label("", "mono", "quiet", "small");
  private final CodeLine before = new CodeLine("diff-removed", "diff-removed-mark");
  private final CodeLine after = new CodeLine("diff-added", "diff-added-mark");
  private final Label becomes = Pieces.label("→", "accent-text");
  private final Label cause = Pieces.label("", "small");
  private final Label heading = Pieces.label("", "strong");
  private final Label note = Pieces.label("", "quiet", "small");
  private final Pane sides = new Sides();
  private final HBox headRow = Pieces.row(16, heading, note);
  private final Label reason = Pieces.label("", "small");
  private final HBox reasonRow = new HBox(reason);

  /**
   * @param open called with the profile field of a changed row that was clicked
   */
  DiffCell(Consumer<String> open) {
    getStyleClass().add("diff-cell");
    becomes.setAlignment(Pos.CENTER);
    reason.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(reason, Priority.ALWAYS);
    reasonRow.setAlignment(Pos.CENTER_LEFT);
    reasonRow.setPadding(new Insets(0, 0, 0, NUMBER + CodeLine.EDGE));
    reasonRow.setMinWidth(0);
    reasonRow.setPrefWidth(1);
    sides.getChildren().addAll(number, before, becomes, after, cause);
    setOnMouseEntered(enter -> setTooltip(tip()));
    setOnMouseClicked(
        click -> {
          DiffRow row = getItem();
          if (row != null
              && !row.path().isEmpty()
              && click.getButton() == MouseButton.PRIMARY
              && click.getClickCount() == 2) {
            open.accept(row.path().split(", ")[0]);
          }
        });
  }

  @Override
  protected void updateItem(DiffRow row, boolean empty) {
    super.updateItem(row, empty);
    setText(null);
    if (empty) {
      setGraphic(null);
      return;
    }
    switch (row.kind()) {
      case FILE -> head(row.before(), row.after());
      case FOLD -> head("", row.before());
      case REASON -> reason(row);
      default -> line(row);
    }
    setAccessibleText(
        switch (row.kind()) {
          case CHANGED -> row.line() + ": " + row.after().strip() + ", " + row.cause();
          case REASON -> row.cause();
          default -> row.before();
        });
  }

  /** The whole of a line that the row cuts; null where it cuts none. */
  private Tooltip tip() {
    boolean line = getGraphic() == sides && getItem() != null;
    boolean changed = line && after.isVisible();
    if (!line || !before.cut() && !(changed && after.cut())) {
      return null;
    }
    DiffRow row = getItem();
    Tooltip tip = new Tooltip(changed ? row.before() + "\n" + row.after() : row.before());
    // A tip floats outside of what is scaled, so that it takes the row's own scale.
    double scale = getLocalToSceneTransform().getMxx();
    tip.setStyle(
        String.format(
            Locale.ROOT,
            "-fx-font-family: \"B612 Mono Regular\"; -fx-font-size: %.1fpx;",
            TIP * scale));
    tip.setWrapText(true);
    tip.setMaxWidth(getListView().getWidth() * scale);
    return tip;
  }

  /** Whether a list of this width has a margin for what causes a line. */
  static boolean hasMargin(double width) {
    return width >= LEAST_FOR_MARGIN;
  }

  private void reason(DiffRow row) {
    reason(reason, row.cause(), row.faded().isEmpty());
    setGraphic(reasonRow);
  }

  private static void reason(Label label, String words, boolean causes) {
    label.setText(words);
    Pieces.style(label, "quiet", !causes);
    Pieces.style(label, "accent-text", causes);
    label.setGraphic(causes || words.isEmpty() ? null : Mark.OPEN.sign(8));
  }

  private void head(String words, String quiet) {
    heading.setText(words);
    note.setText(quiet);
    setGraphic(headRow);
  }

  private void line(DiffRow row) {
    boolean changed = row.kind() == DiffRow.Kind.CHANGED;
    number.setText(Integer.toString(row.line()));
    int start = changed ? row.markStart() : -1;
    int tail = row.sameTail();
    before.show(row.before(), start, row.before().length() - tail, !row.faded().isEmpty());
    if (changed) {
      after.show(row.after(), start, row.after().length() - tail, !row.faded().isEmpty());
    }
    after.setVisible(changed);
    becomes.setVisible(changed);
    reason(cause, changed ? row.cause() : row.faded(), changed);
    setGraphic(sides);
  }

  /** One line, or two equal branches, and the margin. */
  private final class Sides extends Pane {
    @Override
    protected void layoutChildren() {
      double width = getWidth();
      double margin = hasMargin(getListView().getWidth()) ? CAUSE : 0;
      cause.setVisible(margin > 0);
      double room = width - NUMBER - margin - 16;
      double branch = (room - FORK) / 2;
      number.resizeRelocate(0, 4, NUMBER - 12, HEIGHT - 8);
      before.resizeRelocate(NUMBER, 0, after.isVisible() ? branch : room, HEIGHT);
      becomes.resizeRelocate(NUMBER + branch, 2, FORK, HEIGHT - 4);
      after.resizeRelocate(NUMBER + branch + FORK, 0, branch, HEIGHT);
      cause.resizeRelocate(NUMBER + room + 12, 3, margin, HEIGHT - 6);
    }

    @Override
    protected double computePrefWidth(double height) {
      return 100;
    }

    @Override
    protected double computePrefHeight(double width) {
      return HEIGHT;
    }
  }

  /** One line of code with the part that differs washed. */
  private static final class CodeLine extends Region {
    private static final double EDGE = 8;

    /** Characters that stay in sight before what differs. */
    private static final int BEFORE = 6;

    private final Text text = new Text();
    private final Rectangle mark = new Rectangle();
    private final Rectangle clip = new Rectangle();
    private final String ground;
    private int from = -1;
    private int to;

    CodeLine(String ground, String markStyle) {
      this.ground = ground;
      text.getStyleClass().addAll("draw-text", "mono", "code");
      mark.getStyleClass().add(markStyle);
      setClip(clip);
      getChildren().addAll(mark, text);
    }

    /** Whether its end or its beginning is out of sight. */
    boolean cut() {
      return text.getX() < EDGE || text.getX() + text.getLayoutBounds().getWidth() > getWidth();
    }

    void show(String words, int start, int end, boolean faded) {
      from = start;
      to = end;
      text.setText(words);
      Pieces.style(this, ground, start >= 0);
      Pieces.style(text, "quiet", faded);
      mark.setVisible(start >= 0 && end > start);
      requestLayout();
    }

    @Override
    protected void layoutChildren() {
      clip.setWidth(getWidth());
      clip.setHeight(getHeight());
      double left = EDGE;
      text.setY(HEIGHT - 7);
      if (mark.isVisible() && !text.getText().isEmpty()) {
        // Every character of the mono face is as wide as any other.
        double one = text.getLayoutBounds().getWidth() / text.getText().length();
        // What differs is in sight, however long the line is.
        double beyond = EDGE + one * to + EDGE - getWidth();
        left -= Math.max(0, Math.min(beyond, one * (from - BEFORE)));
        mark.setX(left + one * from);
        mark.setWidth(one * (to - from));
        mark.setY(3);
        mark.setHeight(HEIGHT - 6);
      }
      text.setX(left);
    }
  }
}
