package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.DriverPlace;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;

/**
 * The driver places of a small board, in one row or two, each with the axis that it drives; where
 * there are more than the width has letters for, narrower and without them.
 */
final class DriverSockets {
  private static final double WIDTH = 14;
  private static final double HEIGHT = 14;
  private static final double GAP = 3;

  private final Sketch sketch;

  DriverSockets(Sketch sketch) {
    this.sketch = sketch;
  }

  /**
   * @param width room for a row, pixels
   * @param rows at most
   * @param onSheet false where only the profile says that these places are there: then dashed
   */
  void draw(List<DriverPlace> places, double x, double y, double width, int rows, boolean onSheet) {
    int inRow = Math.max(1, (int) ((width + GAP) / (WIDTH + GAP)));
    boolean lettered = places.size() <= inRow * rows;
    int across = lettered ? inRow : (places.size() + rows - 1) / rows;
    double pitch = lettered ? WIDTH + GAP : Math.min(WIDTH + GAP, (width + GAP) / across);
    double box = lettered ? WIDTH : Math.max(1, pitch - Math.min(GAP, pitch / 3));
    for (int i = 0; i < places.size(); i++) {
      double left = x + i % across * pitch;
      double top = y + i / across * (HEIGHT + GAP - 1);
      Node drawn = sketch.box(left, top, box, HEIGHT, "fine");
      drawn.setId("driver-" + places.get(i).name());
      if (!onSheet) {
        drawn.getStyleClass().add("dashed");
      }
      if (lettered) {
        sketch.text(letter(places.get(i)), left + box / 2, top + HEIGHT - 3, 0.5, "small");
      }
    }
  }

  private static String letter(DriverPlace place) {
    String axis = place.axes().isEmpty() ? "" : place.axes().get(0);
    return axis.isEmpty() ? "" : axis.substring(0, 1).toUpperCase(Locale.ROOT);
  }
}
