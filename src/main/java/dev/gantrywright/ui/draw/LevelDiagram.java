package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.EndstopLevels;
import dev.gantrywright.ui.state.Texts;

/** The level at an endstop's pin over one touch, and what the firmware reads. */
final class LevelDiagram {
  private static final double STEP = 86;

  private final Sketch sketch;
  private final EndstopLevels levels;

  LevelDiagram(Sketch sketch, EndstopLevels levels) {
    this.sketch = sketch;
    this.levels = levels;
  }

  /** The same in words, for screen readers. */
  String words() {
    return Texts.of(
        "circuit.words",
        word(levels.rest()),
        reading(levels.rest()),
        word(levels.touched()),
        reading(levels.touched()));
  }

  void draw(double x, double y, boolean touched) {
    double left = x + 46;
    double middle = left + STEP;
    double right = middle + STEP;
    var wash = sketch.box(touched ? middle : left, y - 8, STEP, 138, "chosen-wash");
    wash.toBack();
    sketch.text(
        Texts.of("circuit.rest"), left + STEP / 2, y + 8, 0.5, touched ? "quiet" : "strong");
    sketch.text(
        Texts.of("circuit.touched"), middle + STEP / 2, y + 8, 0.5, touched ? "strong" : "quiet");
    double high = y + 30;
    double low = y + 66;
    sketch.text(Texts.of("level.high"), x, high + 4, 0, "quiet");
    sketch.text(Texts.of("level.low"), x, low + 4, 0, "quiet");
    sketch.line(left, high, right, high, "hair");
    sketch.line(left, low, right, low, "hair");
    double first = height(levels.rest(), high, low);
    double second = height(levels.touched(), high, low);
    stretch(left, middle, first, levels.rest());
    stretch(middle, right, second, levels.touched());
    if (first != second) {
      sketch.line(middle, first, middle, second, "ink");
    }
    rows(x, left, y + 96);
  }

  private void rows(double x, double left, double y) {
    sketch.text(Texts.of("circuit.pinRow"), x, y, 0, "quiet");
    sketch.text(Texts.of("circuit.readsRow"), x, y + 26, 0, "quiet");
    EndstopLevels.Level[] both = {levels.rest(), levels.touched()};
    for (int i = 0; i < 2; i++) {
      double centre = left + STEP * i + STEP / 2;
      sketch.text(word(both[i]), centre, y, 0.5);
      sketch.text(reading(both[i]), centre, y + 26, 0.5, "strong");
    }
    Boolean agrees = levels.agrees();
    String key = agrees == null ? "unknown" : agrees ? "right" : "wrong";
    var sign = (agrees == null ? Mark.NOTE : agrees ? Mark.SETTLED : Mark.ERROR).sign(12);
    sign.setLayoutX(x);
    sign.setLayoutY(y + 42);
    sketch.getChildren().add(sign);
    sketch.text(
        Texts.of("circuit.verdict." + key),
        x + 18,
        y + 52,
        0,
        agrees == null || agrees ? "small" : "error-text");
  }

  private void stretch(double from, double to, double y, EndstopLevels.Level level) {
    boolean held = level == EndstopLevels.Level.HIGH || level == EndstopLevels.Level.LOW;
    var line = sketch.line(from, y, to, y, held ? "thick" : "faint");
    if (!held) {
      line.getStyleClass().add("dashed");
    }
  }

  private static double height(EndstopLevels.Level level, double high, double low) {
    return switch (level) {
      case HIGH -> high;
      case LOW -> low;
      default -> (high + low) / 2;
    };
  }

  private static String word(EndstopLevels.Level level) {
    return Texts.of("level." + level.name().toLowerCase(java.util.Locale.ROOT));
  }

  private String reading(EndstopLevels.Level level) {
    Boolean triggered = levels.triggered(level);
    return triggered == null ? "?" : Texts.of(triggered ? "state.triggered" : "state.open");
  }
}
