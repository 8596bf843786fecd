package dev.gantrywright.ui.state;

import dev.gantrywright.ui.theme.Mode;
import java.util.ArrayList;
import java.util.List;

/**
 * What the window remembers between two runs.
 *
 * @param recent profile files, newest first
 * @param mode light or dark
 * @param zoom scale of everything, 1 is usual
 * @param x left edge on the screen; NaN where the system chooses
 * @param y top edge
 * @param width of the window, pixels
 * @param height of the window, pixels
 * @param maximised whether it fills the screen
 */
public record Habits(
    List<String> recent,
    Mode mode,
    double zoom,
    double x,
    double y,
    double width,
    double height,
    boolean maximised) {
  /** Recent files kept; common practice, no published source. */
  private static final int KEPT = 20;

  private static final double LEAST_ZOOM = 0.7;
  private static final double MOST_ZOOM = 2.5;

  public Habits {
    recent = List.copyOf(recent);
  }

  public static Habits first() {
    return new Habits(List.of(), Mode.LIGHT, 1, Double.NaN, Double.NaN, 1280, 760, false);
  }

  /** With a file at the head of the recent ones. */
  public Habits opened(String file) {
    List<String> next = new ArrayList<>(recent);
    next.remove(file);
    next.add(0, file);
    return new Habits(
        next.subList(0, Math.min(KEPT, next.size())), mode, zoom, x, y, width, height, maximised);
  }

  public Habits with(Mode next) {
    return new Habits(recent, next, zoom, x, y, width, height, maximised);
  }

  /** With another scale, within reason. */
  public Habits zoomed(double next) {
    double kept = Math.max(LEAST_ZOOM, Math.min(MOST_ZOOM, Math.rint(next * 10) / 10));
    return new Habits(recent, mode, kept, x, y, width, height, maximised);
  }

  public Habits placed(double left, double top, double wide, double high, boolean full) {
    return new Habits(recent, mode, zoom, left, top, wide, high, full);
  }
}
