package dev.gantrywright.ui.theme;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/** The work with something beside it; below it where the width is not enough for both. */
public class Beside extends Region {
  /** The least that the work is worth being laid beside something. */
  private static final double LEAST = 440;

  private final double wide;
  private final double gap;
  private Region main;
  private Region side;

  /**
   * @param wide width of what stands beside, pixels
   */
  public Beside(double wide, double gap) {
    this.wide = wide;
    this.gap = gap;
  }

  public final void put(Region work, Region beside) {
    main = work;
    side = beside;
    getChildren().setAll(main, side);
  }

  private boolean narrow(double width) {
    return width < wide + gap + LEAST;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected double computePrefWidth(double height) {
    return main.prefWidth(-1) + gap + wide;
  }

  @Override
  protected double computeMinHeight(double width) {
    double room = width < 0 ? getWidth() : width;
    return narrow(room)
        ? least(main, room) + gap + side.prefHeight(room)
        : Math.max(least(main, room - wide - gap), side.minHeight(wide));
  }

  private static double least(Region region, double width) {
    return region.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    double room = width < 0 ? getWidth() : width;
    return narrow(room)
        ? main.prefHeight(room) + gap + side.prefHeight(room)
        : Math.max(main.prefHeight(room - wide - gap), side.prefHeight(wide));
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    if (!narrow(width)) {
      double left = width - wide - gap;
      main.resizeRelocate(0, 0, left, height);
      side.resizeRelocate(left + gap, 0, wide, height);
      return;
    }
    double below = side.prefHeight(width);
    double above = Math.max(least(main, width), height - gap - below);
    main.resizeRelocate(0, 0, width, above);
    side.resizeRelocate(0, above + gap, width, below);
  }
}
