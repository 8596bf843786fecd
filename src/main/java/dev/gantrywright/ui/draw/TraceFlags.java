package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.TraceMark;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Group;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;

/** The user's marks in the trace, a line with its number each, and the line of what is read. */
final class TraceFlags extends Group {
  private static final double NUMBER_TOP = 11;

  private final Map<Integer, Flag> flags = new HashMap<>();
  private final Line reading = new Line();

  private record Flag(Group whole, Line line, Text number) {}

  TraceFlags() {
    setManaged(false);
    reading.getStyleClass().addAll("fine");
    reading.setVisible(false);
    getChildren().add(reading);
  }

  /** Where a moment is in the picture. */
  interface Places {
    /** Pixels from its left edge; outside of it for a moment that it does not show. */
    double of(long nanos);
  }

  void show(List<TraceMark> marks, Places places, double width, double height) {
    flags
        .entrySet()
        .removeIf(
            each -> {
              boolean gone = marks.stream().noneMatch(m -> m.number() == each.getKey());
              if (gone) {
                getChildren().remove(each.getValue().whole());
              }
              return gone;
            });
    for (TraceMark mark : marks) {
      Flag flag = flags.computeIfAbsent(mark.number(), this::made);
      double x = Math.rint(places.of(mark.nanos()));
      flag.whole().setVisible(x >= 0 && x <= width);
      flag.whole().setTranslateX(Math.min(x, width - 1));
      flag.line().setEndY(height);
      double room = flag.number().getLayoutBounds().getWidth() + 3;
      flag.number().setX(x + room > width ? -room : 3);
    }
  }

  private Flag made(int number) {
    Line line = new Line(0.5, 0, 0.5, 0);
    line.getStyleClass().addAll("live", "dashed");
    Text text = new Text(String.valueOf(number));
    text.getStyleClass().addAll("draw-text", "strong", "accent-text");
    text.setY(NUMBER_TOP);
    Group whole = new Group(line, text);
    whole.setId("trace-flag-" + number);
    getChildren().add(0, whole);
    whole.applyCss();
    return new Flag(whole, line, text);
  }

  /** Draws the line of what is read; outside of the picture none. */
  void read(double x, double width, double height) {
    reading.setVisible(x >= 0 && x <= width);
    reading.setStartX(Math.rint(x) + 0.5);
    reading.setEndX(Math.rint(x) + 0.5);
    reading.setEndY(height);
  }
}
