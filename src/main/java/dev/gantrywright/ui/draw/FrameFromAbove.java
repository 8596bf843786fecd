package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.HomeEnd;
import dev.gantrywright.machine.Kinematics;

/** A machine with straight axes seen from above: bed, cross beam, head, ends of X and Y. */
final class FrameFromAbove {
  private final PlanParts parts;
  private final Sketch sketch;

  FrameFromAbove(PlanParts parts) {
    this.parts = parts;
    this.sketch = parts.sketch;
  }

  void draw(double x, double y, double width, double height) {
    double room = Math.min(width - 96, height - 44);
    double tallest = Math.max(parts.travel("x", 200), parts.travel("y", 200));
    double bedWidth = Math.max(90, room * parts.travel("x", 200) / tallest);
    double bedHeight = Math.max(90, room * parts.travel("y", 200) / tallest);
    double left = x + 52 + (width - 96 - bedWidth) / 2;
    double top = y + 14;
    sketch.box(left, top, bedWidth, bedHeight, "faint", "paper");
    double beam = top + bedHeight * 0.42;
    double head = left + bedWidth * 0.42;
    if (parts.profile().kinematics() == Kinematics.COREXY) {
      crossedBelts(left, top, bedWidth, bedHeight, beam, head);
    }
    sketch.line(left - 14, beam, left + bedWidth + 14, beam, "thick");
    head(head, beam);
    homing("x", head, beam, bedWidth * 0.2);
    homing("y", left + bedWidth * 0.8, beam, bedHeight * 0.16);
    ends(left, top, bedWidth, bedHeight, beam);
    parts.motor("x", left - 26, top + (beam - top) * 0.3);
    parts.motor("y", left + bedWidth + 20, top + 12);
    sketch.text(parts.span("x"), left + bedWidth / 2, top + bedHeight + 30, 0.5, "quiet");
    var span = sketch.text(parts.span("y"), 0, 0, 0.5, "quiet");
    span.setRotate(-90);
    span.setX(left + 12);
    span.setY(top + bedHeight * 0.76);
  }

  private void head(double head, double beam) {
    sketch.box(head - 17, beam - 14, 34, 28, "ink", "paper");
    sketch.circle(head, beam, 5, "solid");
    parts.target("axes.x", head - 17, beam - 14, 34, 28);
    if (parts.profile().axes().containsKey("e")) {
      parts.motor("e", head, beam - 34);
    }
  }

  private void ends(double left, double top, double width, double height, double beam) {
    double x = left - ContactSign.LENGTH - 2;
    parts.endstop("xMin", x, beam + 18, left - 4, beam + 38, 1);
    double right = left + width + 4;
    parts.endstop("xMax", right, beam + 18, right, beam + 38, 0);
    // Left of the middle: beside it stands the longest word of a state.
    double mid = left + width * 0.4 - ContactSign.LENGTH / 2;
    parts.endstop("yMin", mid, top + height, mid + ContactSign.LENGTH + 6, top + height - 20, 0);
    parts.endstop("yMax", mid, top, mid + ContactSign.LENGTH + 6, top + 14, 0);
  }

  /** An arrow toward the end to which the axis homes. */
  private void homing(String axis, double x, double y, double length) {
    Axis values = parts.profile().axes().get(axis);
    if (values == null || values.homing().end() == null) {
      return;
    }
    int way = values.homing().end() == HomeEnd.MIN ? -1 : 1;
    if (axis.equals("x")) {
      double from = x + way * 24;
      double to = from + way * length;
      sketch.line(from, y - 9, to, y - 9, "fine");
      sketch.polyline("fine", to - way * 5, y - 13, to, y - 9, to - way * 5, y - 5);
    } else {
      // Y grows away from the viewer, so that its low end is at the bottom of the drawing.
      double from = y - way * 12;
      double to = from - way * length;
      sketch.line(x, from, x, to, "fine");
      sketch.polyline("fine", x - 4, to + way * 5, x, to, x + 4, to + way * 5);
    }
  }

  /** Two belts that cross: motor travel is x + y and x - y. */
  private void crossedBelts(
      double left, double top, double width, double height, double beam, double head) {
    sketch.polyline(
        "faint",
        left + 8,
        top + height - 8,
        left + 8,
        beam - 4,
        head,
        beam - 4,
        left + width - 8,
        beam - 4,
        left + width - 8,
        top + 8,
        left + 8,
        top + 8);
    sketch.polyline(
        "faint",
        left + width - 8,
        top + height - 8,
        left + width - 8,
        beam + 4,
        head,
        beam + 4,
        left + 8,
        beam + 4,
        left + 8,
        top + 8);
  }
}
