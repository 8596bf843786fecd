package dev.gantrywright.ui.describe;

import dev.gantrywright.ui.state.MarginNote;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.function.Function;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polyline;

/**
 * A form with its margin: notes stand level with the field that they speak of, joined to it by a
 * hairline, and scroll with it.
 */
public final class MarginSheet extends Region {
  private static final double GAP = 8;
  private static final double RULE = 24;
  private static final double TOP = 16;

  /** A note with two lines and a button, for one whose height is not known yet, pixels. */
  private static final double TYPICAL = 120;

  /** From this rank on a note is never folded. */
  private static final int STAYS = 6;

  /** Cards kept for findings that may come back. */
  private static final int MOST_RESTING = 12;

  /** Below this width an empty margin gives its room to the form. */
  private static final double NARROW = 720;

  private final VBox form;
  private final Function<String, Region> boxOf;
  private final NoteCard.Acts acts;
  private final Map<String, NoteCard> cards = new LinkedHashMap<>();
  private final Map<String, NoteCard> resting = new LinkedHashMap<>();
  private final Map<NoteCard, Polyline> lines = new HashMap<>();
  private final Region rule = new Region();
  private final Map<NoteCard, Double> wholeHeights = new WeakHashMap<>();
  private HelpCard help;
  private double lowestCard;
  private String helpPath = "";

  /**
   * @param boxOf the control of a field path; null where the form has none
   */
  public MarginSheet(VBox form, Function<String, Region> boxOf, NoteCard.Acts acts) {
    this.form = form;
    this.boxOf = boxOf;
    this.acts = acts;
    rule.getStyleClass().add("margin-rule");
    getChildren().addAll(form, rule);
  }

  /**
   * Shows these notes; cards of notes that stay are kept, so that nothing flickers. A finding that
   * a keystroke settles often comes back with the next one: its card rests until then.
   */
  public void show(List<MarginNote> notes) {
    Map<String, NoteCard> next = new LinkedHashMap<>();
    for (MarginNote note : notes) {
      next.put(note.key(), card(note));
    }
    if (List.copyOf(next.values()).equals(List.copyOf(cards.values()))) {
      return;
    }
    cards.forEach(
        (key, card) -> {
          if (next.get(key) != card) {
            rest(key, card);
          }
        });
    cards.clear();
    cards.putAll(next);
    inOrder();
    requestLayout();
  }

  private NoteCard card(MarginNote note) {
    NoteCard kept = cards.get(note.key());
    if (kept == null) {
      kept = resting.remove(note.key());
    }
    if (kept == null || kept.note().gravity() != note.gravity()) {
      return added(note);
    }
    if (kept.note() != note) {
      kept.show(note);
    }
    visible(kept, true);
    return kept;
  }

  private NoteCard added(MarginNote note) {
    NoteCard card = new NoteCard(note, acts);
    Polyline line = new Polyline();
    line.getStyleClass().add("hairline-" + note.gravity().word());
    line.setMouseTransparent(true);
    lines.put(card, line);
    // Hairlines lie below every card.
    getChildren().add(getChildren().indexOf(rule) + 1, line);
    getChildren().add(card);
    return card;
  }

  private void rest(String key, NoteCard card) {
    visible(card, false);
    NoteCard other = resting.put(key, card);
    if (other != null) {
      remove(other);
    }
    while (resting.size() > MOST_RESTING) {
      remove(resting.remove(resting.keySet().iterator().next()));
    }
  }

  private void remove(NoteCard card) {
    getChildren().removeAll(card, lines.remove(card));
  }

  private void visible(NoteCard card, boolean visible) {
    card.setVisible(visible);
    card.setManaged(visible);
    lines.get(card).setVisible(visible);
  }

  /** The Tab key walks the cards in the order of the notes. */
  private void inOrder() {
    List<Node> standing = getChildren().stream().filter(cards::containsValue).toList();
    if (!standing.equals(List.copyOf(cards.values()))) {
      cards.values().forEach(Node::toFront);
    }
  }

  /**
   * Help on the field that has the keyboard stands in the margin too.
   *
   * @param toMind what the catalogue says of the part that stands in it
   */
  void help(FieldRow row, Optional<String> toMind) {
    String path = row == null ? "" : row.path();
    if (path.equals(helpPath)) {
      return;
    }
    getChildren().remove(help);
    helpPath = path;
    help = row == null ? null : new HelpCard(row.field(), toMind);
    if (help != null) {
      getChildren().add(help);
    }
    requestLayout();
  }

  private double marginWidth(double width) {
    if (width < NARROW) {
      return cards.isEmpty() && help == null ? 0 : 216;
    }
    return Math.max(236, Math.min(400, width * 0.36));
  }

  @Override
  protected double computePrefHeight(double width) {
    double w = width < 0 ? getWidth() : width;
    return Math.max(form.prefHeight(w - marginWidth(w)), lowestCard);
  }

  @Override
  protected double computeMinHeight(double width) {
    // Never less than it needs: the pane around it then scrolls instead of cutting the form off.
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double margin = marginWidth(width);
    double formWidth = width - margin;
    form.resizeRelocate(0, 0, formWidth, Math.max(getHeight(), form.prefHeight(formWidth)));
    form.layout();
    rule.resizeRelocate(formWidth, 0, 1, Math.max(getHeight(), form.getHeight()));
    place(formWidth, margin - RULE - 20);
  }

  private void place(double formWidth, double cardWidth) {
    Map<Region, String> paths = new LinkedHashMap<>();
    cards.values().forEach(card -> paths.put(card, card.note().path()));
    if (help != null) {
      paths.put(help, helpPath);
    }
    Map<Region, Double> anchors = new LinkedHashMap<>();
    paths.forEach((card, path) -> anchors.put(card, anchor(path)));
    List<Region> order = new ArrayList<>(paths.keySet());
    order.sort(Comparator.comparing(anchors::get));
    double[] wanted = new double[order.size()];
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] = anchors.get(order.get(i)) - 18;
    }
    double[] heights = folded(order, wanted, cardWidth);
    double[] places = NoteStack.place(wanted, heights, GAP, TOP);
    double lowest = 0;
    for (int i = 0; i < places.length; i++) {
      Region card = order.get(i);
      card.resizeRelocate(formWidth + RULE, places[i], cardWidth, heights[i]);
      if (card instanceof NoteCard note) {
        double middle = note.folded() ? NoteCard.FOLDED / 2 : 18;
        join(lines.get(note), note, anchors.get(card), formWidth, places[i] + middle);
      }
      lowest = Math.max(lowest, places[i] + heights[i] + 16);
    }
    if (lowest > lowestCard + 0.5 || lowest < lowestCard - 0.5) {
      lowestCard = lowest;
      requestParentLayout();
    }
  }

  /** Folds what must be folded, and says how high each card then is. */
  private double[] folded(List<Region> order, double[] wanted, double cardWidth) {
    double[] whole = new double[wanted.length];
    int[] ranks = new int[wanted.length];
    for (int i = 0; i < wanted.length; i++) {
      whole[i] = wholeHeight(order.get(i), cardWidth);
      ranks[i] = rank(order.get(i));
    }
    boolean[] fold =
        NoteFolds.of(wanted, whole, NoteCard.FOLDED, ranks, STAYS, GAP, TOP, getHeight());
    double[] heights = new double[wanted.length];
    for (int i = 0; i < wanted.length; i++) {
      heights[i] = fold[i] ? NoteCard.FOLDED : whole[i];
      if (order.get(i) instanceof NoteCard card && card.folded() != fold[i]) {
        card.fold(fold[i]);
        // Its styles of this frame were applied before: without them it would be drawn bare.
        card.applyCss();
      }
    }
    return heights;
  }

  private double wholeHeight(Region card, double width) {
    if (!(card instanceof NoteCard note)) {
      return card.prefHeight(width);
    }
    boolean folded = note.folded();
    if (!folded) {
      double height = card.prefHeight(width);
      wholeHeights.put(note, height);
      return height;
    }
    Double known = wholeHeights.get(note);
    if (known != null && known > 0) {
      return known;
    }
    return TYPICAL;
  }

  /**
   * Help, and what the user opened or has in hand, stays; the graver the longer, with a remedy
   * first.
   */
  private int rank(Region card) {
    if (!(card instanceof NoteCard note) || note.opened() || note.note().path().equals(helpPath)) {
      return STAYS;
    }
    boolean click =
        note.note().fixes().stream().anyMatch(fix -> fix.safety() != MarginNote.Safety.SHOW_ONLY);
    int grave =
        switch (note.note().gravity()) {
          case ERROR -> 4;
          case WARNING -> 2;
          case NOTE -> 0;
        };
    return grave + (click ? 1 : 0);
  }

  /** From the field's row to the card: level where it can be, else with one bend in the margin. */
  private void join(Polyline line, NoteCard card, double anchor, double formWidth, double at) {
    Region box = boxOf.apply(card.note().path());
    if (box == null) {
      line.getPoints().clear();
      return;
    }
    Node row = box.getParent();
    double from = row instanceof FieldRow ? rightOf(row, box) : formWidth - 22;
    double bend = formWidth + 6;
    List<Double> points =
        List.of(from, anchor, bend, anchor, formWidth + RULE - 6, at, formWidth + RULE, at);
    if (!points.equals(line.getPoints())) {
      line.getPoints().setAll(points);
    }
  }

  /** The right end of what stands in the row. */
  private double rightOf(Node row, Region box) {
    double right = box.getBoundsInParent().getMaxX();
    if (row instanceof FieldRow fields) {
      right = Math.max(right, fields.contentRight());
    }
    Bounds inSheet = sceneToLocal(row.localToScene(row.getBoundsInLocal()));
    return inSheet.getMinX() + right + 10;
  }

  private double anchor(String path) {
    Region box = boxOf.apply(path);
    if (box == null || box.getScene() == null) {
      return 0;
    }
    Bounds at = sceneToLocal(box.localToScene(box.getLayoutBounds()));
    return at.getCenterY();
  }
}
