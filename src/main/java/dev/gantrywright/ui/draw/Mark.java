package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.Gravity;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

/** The signs of the window, each with its own outline so that none depends on colour. */
public enum Mark {
  ERROR("error"),
  WARNING("warning"),
  NOTE("note"),
  SETTLED("settled"),
  OPEN("open");

  private final String word;

  Mark(String word) {
    this.word = word;
  }

  /** The sign of a note. */
  public static Mark of(Gravity gravity) {
    return switch (gravity) {
      case ERROR -> ERROR;
      case WARNING -> WARNING;
      case NOTE -> NOTE;
    };
  }

  /** For screen readers, and beside the sign where there is room. */
  public String word() {
    return word;
  }

  /** A fresh sign of this size, in pixels. */
  public Node sign(double size) {
    Shape shape =
        switch (this) {
          case ERROR -> new Rectangle(size * 0.08, size * 0.08, size * 0.84, size * 0.84);
          case WARNING -> new Polygon(size / 2, 0.02 * size, size, size * 0.94, 0, size * 0.94);
          case NOTE, OPEN -> new Circle(size / 2, size / 2, size * 0.42);
          case SETTLED ->
              new Polyline(
                  // So far from the edges that the ends of the stroke stay inside.
                  size * 0.13, size * 0.54, size * 0.42, size * 0.83, size * 0.88, size * 0.18);
        };
    shape.getStyleClass().addAll("mark", "mark-" + word);
    // An invisible square keeps signs of every outline the same size in a row of text.
    Rectangle room = new Rectangle(size, size);
    room.setFill(null);
    Group group = new Group(room, shape);
    group.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    group.setAccessibleText(word);
    group.getStyleClass().add("sign");
    return group;
  }
}
