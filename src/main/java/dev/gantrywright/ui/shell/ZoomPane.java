package dev.gantrywright.ui.shell;

import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** Scales everything inside; the content is laid out in the room that is left by the scale. */
public final class ZoomPane extends Region {
  private final Region content;
  private final Scale scale = new Scale(1, 1);

  public ZoomPane(Region content) {
    this.content = content;
    content.getTransforms().add(scale);
    getChildren().add(content);
  }

  public void zoom(double factor) {
    scale.setX(factor);
    scale.setY(factor);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    content.resizeRelocate(0, 0, getWidth() / scale.getX(), getHeight() / scale.getY());
  }
}
