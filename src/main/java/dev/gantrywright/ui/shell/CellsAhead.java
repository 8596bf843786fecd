package dev.gantrywright.ui.shell;

import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.scene.control.ListView;

/**
 * Makes the cells of a list that is out of sight, one in each pulse. The toolkit would make all of
 * them in the pulse that shows the first lines, with their classes and styles: for a program that
 * has just started that is too long for one pulse.
 */
final class CellsAhead extends AnimationTimer {
  private static final double WIDTH = 400;

  private final ListView<String> list;
  private final Consumer<List<String>> fill;
  private final int count;
  private int made;

  /**
   * @param list of cells of a fixed height; empty, in a scene, not managed
   * @param fill gives the list its items
   * @param count how many cells it is to have
   */
  CellsAhead(ListView<String> list, Consumer<List<String>> fill, int count) {
    this.list = list;
    this.fill = fill;
    this.count = count;
  }

  @Override
  public void handle(long now) {
    made++;
    fill.accept(Collections.nCopies(made, ""));
    list.resize(WIDTH, list.getFixedCellSize() * made + 2);
    list.applyCss();
    list.layout();
    if (made >= count) {
      stop();
      fill.accept(List.of());
    }
  }

  /** The list is to show something now, or nobody will look at it any more. */
  void done() {
    stop();
    if (made > 0 && made < count) {
      made = count;
      fill.accept(List.of());
    }
  }
}
