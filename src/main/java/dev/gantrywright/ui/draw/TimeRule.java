package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.TraceLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import javafx.scene.Group;
import javafx.scene.text.Text;

/** Times of day below the trace, at the bold lines of its picture; they go with it. */
final class TimeRule extends Group {
  /** Room below the picture, pixels. */
  static final double HEIGHT = 18;

  /** What a time takes, with a gap beside it, pixels; with a tenth of a second more. */
  private static final double LEAST = 76;

  private static final double BASE = 13;
  private static final long MS = 1_000_000L;

  /** From one time to the next, and the lines between them: round, and each divides the next. */
  private static final NavigableMap<Long, Long> STEPS =
      new TreeMap<>(
          Map.of(
              500 * MS, 100 * MS,
              1_000 * MS, 500 * MS,
              5_000 * MS, 1_000 * MS,
              10_000 * MS, 5_000 * MS,
              15_000 * MS, 5_000 * MS,
              30_000 * MS, 10_000 * MS,
              60_000 * MS, 10_000 * MS,
              120_000 * MS, 30_000 * MS,
              300_000 * MS, 60_000 * MS));

  private final TraceLook look;
  private final List<Text> times = new ArrayList<>();

  TimeRule(TraceLook look) {
    this.look = look;
    setManaged(false);
  }

  /** The lines of a picture of so many pixels in which a pixel is so long. */
  TracePainter.Rule lines(long pixelNanos) {
    long least = (long) (LEAST * pixelNanos);
    Map.Entry<Long, Long> step = STEPS.ceilingEntry(least);
    Map.Entry<Long, Long> found = step == null ? STEPS.lastEntry() : step;
    return new TracePainter.Rule(look.epochNanos(), found.getValue(), found.getKey());
  }

  /** Puts the times where the bold lines are. */
  void show(TracePainter.Rule rule, long from, long pixelNanos, int width, double top) {
    long begin = Math.floorDiv(from + rule.epochNanos(), rule.bold()) * rule.bold();
    int used = 0;
    for (long at = begin; ; at += rule.bold()) {
      double x = (double) (at - rule.epochNanos() - from) / pixelNanos;
      if (x > width) {
        break;
      }
      used += put(used, look.shortTime(at - rule.epochNanos()), x, width, top) ? 1 : 0;
    }
    for (int i = used; i < times.size(); i++) {
      times.get(i).setVisible(false);
    }
  }

  private boolean put(int at, String words, double x, int width, double top) {
    if (at == times.size()) {
      Text text = new Text();
      text.getStyleClass().addAll("draw-text", "small", "quiet");
      times.add(text);
      getChildren().add(text);
      // Put down in the middle of a frame: its styles would come with the next.
      text.applyCss();
    }
    Text text = times.get(at);
    if (!text.getText().equals(words)) {
      text.setText(words);
    }
    double left = Math.rint(x - text.getLayoutBounds().getWidth() / 2);
    boolean whole = left >= 0 && left + text.getLayoutBounds().getWidth() <= width;
    text.setVisible(whole);
    text.setTranslateX(left);
    text.setTranslateY(top + BASE);
    return whole;
  }
}
