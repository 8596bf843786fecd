package dev.gantrywright.ui.draw;

import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Holds a picture of one size, and makes it smaller rather than cut it where the room is narrow.
 */
public final class Shrunk extends Region {
  private final Region picture;
  private final double width;
  private final Scale scale = new Scale(1, 1);

  /**
   * @param width as far right as anything of the picture is drawn
   */
  public Shrunk(Region picture, double width) {
    this.picture = picture;
    this.width = width;
    picture.getTransforms().add(scale);
    getChildren().add(picture);
    managedProperty().bind(picture.managedProperty());
    visibleProperty().bind(picture.visibleProperty());
    setMinWidth(0);
  }

  private double factor(double room) {
    return room <= 0 ? 1 : Math.min(1, room / width);
  }

  /** Of the picture, which is never laid out narrower than it is drawn. */
  private double heightAt(double room) {
    return picture.prefHeight(Math.max(width, room));
  }

  @Override
  public javafx.geometry.Orientation getContentBias() {
    return javafx.geometry.Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefWidth(double height) {
    return width;
  }

  @Override
  protected double computePrefHeight(double room) {
    return heightAt(room) * factor(room);
  }

  @Override
  protected double computeMinHeight(double room) {
    return computePrefHeight(room < 0 ? getWidth() : room);
  }

  @Override
  protected void layoutChildren() {
    double factor = factor(getWidth());
    scale.setX(factor);
    scale.setY(factor);
    picture.resizeRelocate(0, 0, Math.max(width, getWidth()), heightAt(getWidth()));
  }
}
