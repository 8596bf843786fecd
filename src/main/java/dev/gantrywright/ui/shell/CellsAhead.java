package dev.gantrywright.ui.shell;

import java.util.List;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.scene.control.ListView;

/**
 * Makes the cells of a list that is out of sight, one in each pulse, and sets in them what they may
 * show. The toolkit would make all of them in the pulse that shows the first lines, with their
 * classes, styles and type: for a program that has just started that is too long for one pulse.
 */
final class CellsAhead extends AnimationTimer {
  private static final double WIDTH = 400;

  private final ListView<String> list;
  private final Consumer<List<String>> fill;
  private final List<String> rows;
  private int made;

  /**
   * @param list of cells of a fixed height; empty, in a scene, not managed
   * @param fill gives the list its items
   * @param rows what the first rows may look like, so that text is set as it will be
   */
  CellsAhead(ListView<String> list, Consumer<List<String>> fill, List<String> rows) {
    this.list = list;
    this.fill = fill;
    this.rows = rows;
  }

  @Override
  public void handle(long now) {
    made++;
    fill.accept(rows.subList(0, made));
    list.resize(WIDTH, list.getFixedCellSize() * made + 2);
    list.applyCss();
    list.layout();
    if (made >= rows.size()) {
      stop();
      fill.accept(List.of());
    }
  }

  /** The list is to show something now, or nobody will look at it any more. */
  void done() {
    stop();
    if (made > 0 && made < rows.size()) {
      made = rows.size();
      fill.accept(List.of());
    }
  }
}
