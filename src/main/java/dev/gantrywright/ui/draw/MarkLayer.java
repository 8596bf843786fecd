package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.Gravity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Group;
import javafx.scene.Node;

/**
 * The signs over a drawing, each at the place of its part. They come and go with every keystroke,
 * while the drawing below stays: a sign that was shown once is hidden, not thrown away.
 */
final class MarkLayer extends Group {
  private static final double SIZE = 12;

  private final List<Place> places = new ArrayList<>();

  private record Place(String part, double x, double y, Map<Gravity, Node> signs) {}

  MarkLayer() {
    setManaged(false);
    setMouseTransparent(true);
  }

  /** Forgets all places. */
  void clear() {
    places.clear();
    getChildren().clear();
  }

  void place(String part, double x, double y) {
    places.add(new Place(part, x, y, new EnumMap<>(Gravity.class)));
  }

  /** Shows the gravest finding of each part that has one. */
  void show(Map<String, Gravity> marks) {
    for (Place place : places) {
      Gravity now = marks.get(place.part());
      if (now != null) {
        place.signs().computeIfAbsent(now, gravity -> sign(gravity, place));
      }
      place.signs().forEach((gravity, sign) -> sign.setVisible(gravity == now));
    }
  }

  private Node sign(Gravity gravity, Place place) {
    Node sign = Mark.of(gravity).sign(SIZE);
    sign.setLayoutX(place.x());
    sign.setLayoutY(place.y());
    getChildren().add(sign);
    return sign;
  }
}
