package dev.gantrywright.ui.draw;

import javafx.beans.binding.Bindings;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/**
 * A drawing sheet: shapes put down by coordinates, toned by style class, so that a change of theme
 * needs no redrawing.
 */
public final class Sketch extends Group {
  public Sketch() {
    setManaged(false);
  }

  public void clear() {
    getChildren().clear();
  }

  /**
   * Tones what was put down during a layout pass.
   *
   * <p>The styles of this frame were applied before its layout: without this, new shapes would be
   * black for one frame.
   */
  public void dress() {
    applyCss();
  }

  public Line line(double x1, double y1, double x2, double y2, String... styles) {
    return put(new Line(x1, y1, x2, y2), styles);
  }

  public Rectangle box(double x, double y, double width, double height, String... styles) {
    return put(new Rectangle(x, y, width, height), styles);
  }

  public Circle circle(double x, double y, double radius, String... styles) {
    return put(new Circle(x, y, radius), styles);
  }

  public Arc arc(double x, double y, double radius, double start, double length, String... styles) {
    Arc arc = new Arc(x, y, radius, radius, start, length);
    arc.setType(ArcType.OPEN);
    return put(arc, styles);
  }

  public Polyline polyline(String style, double... points) {
    return put(new Polyline(points), style);
  }

  public Polygon polygon(String style, double... points) {
    return put(new Polygon(points), style);
  }

  /** Text with its base line at y; anchor 0 starts at x, 0.5 is centred on it, 1 ends there. */
  public Text text(String words, double x, double y, double anchor, String... styles) {
    Text text = new Text(words);
    text.setX(x);
    text.setY(y);
    if (anchor != 0) {
      text.translateXProperty()
          .bind(
              Bindings.createDoubleBinding(
                  () -> -text.getLayoutBounds().getWidth() * anchor, text.layoutBoundsProperty()));
    }
    put(text, styles);
    text.getStyleClass().add(0, "draw-text");
    return text;
  }

  public <N extends Node> N put(N node, String... styles) {
    node.getStyleClass().addAll(styles);
    getChildren().add(node);
    return node;
  }
}
