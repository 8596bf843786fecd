package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.BoardWiring;
import dev.gantrywright.ui.state.BoardWiring.Kind;
import dev.gantrywright.ui.state.BoardWiring.Row;
import dev.gantrywright.ui.state.Texts;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.shape.Shape;

/**
 * The board as a plan: its outline with what it connects to what on this machine, and the
 * microcontroller as the block with pins that diagrams draw it as (IEC 60617-12, from memory).
 * Solid is what the board sheet states, dashed what it does not. A click on a connector opens the
 * part that is plugged in.
 */
public final class BoardPlan extends Region {
  /** As far right as anything is drawn, pixels. */
  public static final double WIDTH = 584;

  private static final double ROW = 20;
  private static final double TOP = 54;
  private static final double GAP = 8;

  /** Room for the name of what is plugged in, pixels. */
  private static final double OUTSIDE = 74;

  private final Sketch sketch = new Sketch();
  private final Consumer<String> open;
  private BoardWiring shown;
  private String other = "";
  private double height = 200;
  private double y;
  private double at;

  /**
   * @param open called with the id of the part that was clicked
   */
  public BoardPlan(Consumer<String> open) {
    this.open = open;
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
  }

  /**
   * @param otherPart the microcontroller of the profile where the board carries another; else empty
   */
  public void show(BoardWiring next, String otherPart) {
    if (next.equals(shown) && otherPart.equals(other)) {
      return;
    }
    shown = next;
    other = otherPart;
    sketch.clear();
    double rows = Math.max(side(next.left(), BoardSide.LEFT), side(next.right(), BoardSide.RIGHT));
    double bottom = Math.round(rows + GAP);
    frame(next, bottom);
    at = bottom + 24;
    next.troubles().forEach(this::trouble);
    if (!otherPart.isEmpty()) {
      trouble(Texts.of("board.otherPart", otherPart));
    }
    if (!next.sheet()) {
      sketch.text(Texts.of("board.noSheet"), BoardSide.OUTLINE, at, 0, "quiet");
      at += 18;
    }
    height = at;
    setAccessibleText(next.words());
    requestLayout();
  }

  private void trouble(String words) {
    sketch.put(Mark.ERROR.sign(10)).relocate(BoardSide.OUTLINE, at - 9);
    sketch.text(words, BoardSide.OUTLINE + 16, at, 0, "small", "error-text");
    at += 18;
  }

  @Override
  protected double computePrefHeight(double width) {
    return height;
  }

  @Override
  protected double computeMinHeight(double width) {
    return height;
  }

  /** Outline and microcontroller lie below what was put down before. */
  private void frame(BoardWiring wiring, double bottom) {
    Shape block =
        sketch.box(
            BoardSide.BLOCK, 12.5, BoardSide.BLOCK_WIDTH, bottom - 12.5 - GAP, "ink", "paper");
    Shape outline =
        sketch.box(
            BoardSide.OUTLINE, 0.5, BoardSide.OUTLINE_WIDTH, bottom - 0.5, "ink", "board-ground");
    block.toBack();
    outline.toBack();
    dash(outline, wiring.sheet());
    dash(block, wiring.sheet() && !wiring.part().isEmpty());
    String part = wiring.part().isEmpty() ? Texts.of("board.unknown") : wiring.part();
    double room = BoardSide.BLOCK_WIDTH - 24 - 7 * wiring.clock().length();
    sketch.text(FittedWords.of(part, room, true), BoardSide.BLOCK + 10, 34, 0, "strong");
    sketch.text(wiring.clock(), BoardSide.BLOCK + BoardSide.BLOCK_WIDTH - 10, 34, 1, "quiet");
    String board = FittedWords.of(wiring.name(), BoardSide.BLOCK - BoardSide.OUTLINE - 16, true);
    sketch.text(board, BoardSide.OUTLINE + GAP, 24, 0, "strong");
  }

  private static void dash(Shape shape, boolean stated) {
    if (!stated) {
      shape.getStyleClass().add("dashed");
    }
  }

  /** The rows of one side under the head of each group; says how far down they reach. */
  private double side(List<Row> rows, BoardSide side) {
    y = TOP - ROW;
    Kind group = null;
    for (Row row : rows) {
      y += ROW;
      if (row.kind() != group) {
        y += group == null ? 0 : GAP;
        group = row.kind();
        head(group, side);
        y += ROW;
      }
      row(row, side);
    }
    return y + ROW / 2;
  }

  private void head(Kind kind, BoardSide side) {
    String key = "board.head." + kind.name().toLowerCase(java.util.Locale.ROOT);
    sketch.text(Texts.of(key), side.head(), y + 4, side.headAnchor(), "quiet");
    List<String> pins =
        switch (kind) {
          case DRIVER -> List.of("step", "direction", "enable", "line");
          case PORT -> List.of("send", "receive");
          default -> List.of();
        };
    for (int i = 0; i < pins.size(); i++) {
      sketch.text(Texts.of("board.pin." + pins.get(i)), side.pin(i), y + 4, 0, "quiet");
    }
  }

  private void row(Row row, BoardSide side) {
    boolean free = row.plugged().isEmpty();
    dash(
        sketch.box(side.box(), y - 8, side.boxWidth(), 16, "fine", "paper"),
        row.onBoard() && !row.label().isEmpty());
    boolean known = row.onBoard();
    if (toBlock(row)) {
      dash(sketch.line(side.boxInner(), y, side.block(), y, "fine"), known);
    }
    if (row.reached()) {
      dash(sketch.line(side.boxOuter(), y, side.edge(), y, "fine"), known);
      sketch.circle(side.edge(), y, 3, "fine", "paper");
    }
    if (!free) {
      dash(sketch.line(side.edge() + 3 * side.out(), y, side.wire(), y, "ink"), known);
    }
    String label = row.label().isEmpty() ? "?" : row.label();
    // What is said beside the name is short: its own characters are taken from the name's room.
    double room = side.boxWidth() - 10 - (row.detail().isEmpty() ? 0 : 7 * row.detail().length());
    String name = FittedWords.of(label, room, false);
    sketch.text(name, side.box() + 6, y + 4, 0, free ? "quiet" : "small");
    sketch.text(row.detail(), side.box() + side.boxWidth() - 6, y + 4, 1, "quiet");
    String to = free ? Texts.of(row.reached() ? "board.free" : "board.unrouted") : plugged(row);
    sketch.text(to, side.label(), y + 4, side.labelAnchor(), free ? "quiet" : "strong");
    pins(row, side);
    if (!row.opens().isEmpty() || !name.equals(label)) {
      target(row, side);
    }
  }

  /** Supply and card reach the microcontroller by no pin of their own. */
  private static boolean toBlock(Row row) {
    return row.kind() != Kind.CARD && row.kind() != Kind.SUPPLY;
  }

  /** The first of several, and how many more. */
  private static String plugged(Row row) {
    String[] all = row.plugged().split(", ");
    String more = all.length == 1 ? "" : " +" + (all.length - 1);
    return FittedWords.of(all[0], all.length == 1 ? OUTSIDE : OUTSIDE - 20, true) + more;
  }

  private void pins(Row row, BoardSide side) {
    for (int i = 0; i < row.pins().size(); i++) {
      String pin = row.pins().get(i);
      boolean twice = row.twice().contains(pin);
      if (twice) {
        sketch.put(Mark.ERROR.sign(7)).relocate(side.pin(i) - 9, y - 4);
      }
      String style = twice ? "error-text" : row.plugged().isEmpty() ? "quiet" : "small";
      sketch.text(pin, side.pin(i), y + 4, 0, style);
    }
    if (row.pins().isEmpty() && toBlock(row)) {
      sketch.text("?", side.pin(0), y + 4, 0, "quiet");
    }
  }

  private void target(Row row, BoardSide side) {
    Shape hit = sketch.box(side.target(), y - 10, side.targetWidth(), ROW, "hit");
    Tooltip.install(hit, new Tooltip(row.words()));
    if (row.opens().isEmpty()) {
      return;
    }
    hit.setId("board-opens-" + row.opens().replace('.', '-'));
    hit.setOnMouseClicked(click -> open.accept(row.opens()));
  }
}
