package dev.gantrywright.ui.shell;

import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Scales everything inside; the content is laid out in the room that is left by the scale. A window
 * larger than the least one scales its content up by half of what it is larger, so that it stays
 * legible from a step back.
 */
public final class ZoomPane extends Region {
  private static final double LEAST_WIDTH = 1280;
  private static final double LEAST_HEIGHT = 720;

  /** Beyond this, more room serves better than larger type. */
  private static final double MOST = 1.4;

  private final Region content;
  private final Scale scale = new Scale(1, 1);
  private double chosen = 1;

  public ZoomPane(Region content) {
    this.content = content;
    content.getTransforms().add(scale);
    getChildren().add(content);
  }

  /** The user's own scale, on top of the window's. */
  public void zoom(double factor) {
    chosen = factor;
    requestLayout();
  }

  private double byWindow() {
    double larger = Math.min(getWidth() / LEAST_WIDTH, getHeight() / LEAST_HEIGHT);
    return Math.max(1, Math.min(MOST, 1 + (larger - 1) / 2));
  }

  @Override
  protected void layoutChildren() {
    double factor = chosen * byWindow();
    scale.setX(factor);
    scale.setY(factor);
    content.resizeRelocate(0, 0, getWidth() / factor, getHeight() / factor);
  }
}
