package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.Kinematics;
import dev.gantrywright.machine.PrinterProfile;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * A printer at a glance, for a list of printers: its kinematics, the shape of its bed, and a dot at
 * every end that has a switch. Drawn for its size, with strokes that a step back leaves legible.
 */
public final class SmallPlan extends Region {
  private static final double WIDTH = 112;
  private static final double HEIGHT = 92;
  private static final double ROOM = 64;

  private final Sketch sketch = new Sketch();
  private final PrinterProfile profile;

  public SmallPlan(PrinterProfile profile) {
    this.profile = profile;
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(WIDTH, HEIGHT);
    setPrefSize(WIDTH, HEIGHT);
    setMaxSize(WIDTH, HEIGHT);
    getChildren().add(sketch);
    if (profile.kinematics() == Kinematics.DELTA) {
      columns();
    } else {
      frame();
    }
  }

  private void frame() {
    double x = travel("x");
    double y = travel("y");
    double width = ROOM * x / Math.max(x, y);
    double height = ROOM * y / Math.max(x, y);
    double left = (WIDTH - width) / 2;
    double top = (HEIGHT - height) / 2;
    sketch.box(left, top, width, height, "ink", "paper");
    double beam = top + height * 0.45;
    double head = left + width * 0.42;
    if (profile.kinematics() == Kinematics.COREXY) {
      sketch.line(left, top, left + width, top + height, "faint");
      sketch.line(left, top + height, left + width, top, "faint");
    }
    sketch.line(left - 12, beam, left + width + 12, beam, "thick");
    sketch.box(head - 8, beam - 7, 16, 14, "ink", "paper");
    sketch.circle(head, beam, 3, "solid");
    end("xMin", left - 16, beam);
    end("xMax", left + width + 16, beam);
    end("yMin", left + width * 0.7, top + height);
    end("yMax", left + width * 0.7, top);
  }

  private void columns() {
    double centre = WIDTH / 2;
    double middle = HEIGHT / 2 + 4;
    sketch.circle(centre, middle, 30, "ink", "paper");
    String[] axes = {"x", "y", "z"};
    double[] angles = {210, 330, 90};
    for (int i = 0; i < axes.length; i++) {
      double angle = Math.toRadians(angles[i]);
      double x = centre + 38 * Math.cos(angle);
      double y = middle - 38 * Math.sin(angle);
      sketch.line(x, y, centre, middle, "thick");
      end(axes[i] + "Max", x, y);
    }
    sketch.box(centre - 7, middle - 7, 14, 14, "ink", "paper");
    sketch.circle(centre, middle, 3, "solid");
  }

  private void end(String name, double x, double y) {
    Endstop endstop = profile.endstops().get(name);
    if (endstop != null && Boolean.TRUE.equals(endstop.fitted())) {
      sketch.circle(x, y, 4, "solid");
    }
  }

  private double travel(String axis) {
    var values = profile.axes().get(axis);
    boolean given = values != null && values.travelMin() != null && values.travelMax() != null;
    return given ? Math.max(1, values.travelMax() - values.travelMin()) : 200;
  }
}
