package dev.gantrywright.ui.draw;

/** A machine with three columns seen from above: round bed, arms to the head. */
final class DeltaFromAbove {
  private final PlanParts parts;

  DeltaFromAbove(PlanParts parts) {
    this.parts = parts;
  }

  void draw(double x, double y, double width, double height) {
    Sketch sketch = parts.sketch;
    double radius = Math.min(width, height - 40) / 2 - 24;
    double cx = x + width / 2;
    double cy = y + height / 2;
    sketch.circle(cx, cy, radius, "faint", "paper");
    String[] axes = {"x", "y", "z"};
    double[] angles = {210, 330, 90};
    for (int i = 0; i < 3; i++) {
      double a = Math.toRadians(angles[i]);
      double px = cx + (radius + 14) * Math.cos(a);
      double py = cy - (radius + 14) * Math.sin(a);
      sketch.line(px, py, cx, cy, "thick");
      parts.motor(axes[i], px, py);
      double ex = px + (i == 0 ? -48 : 16);
      parts.endstop(axes[i] + "Max", ex, py + 22, ex, py + 40, 0);
    }
    sketch.box(cx - 14, cy - 14, 28, 28, "ink", "paper");
    sketch.circle(cx, cy, 5, "solid");
    sketch.text(parts.span("x"), cx, y + height - 4, 0.5, "quiet");
  }
}
