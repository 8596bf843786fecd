package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.DriveKind;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.DriveFigures;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** What turns the motor's rotation into travel, with its figures. */
public final class DriveTrain extends Region {
  private static final double HEIGHT = 116;

  private final Sketch sketch = new Sketch();
  private String drawn = "";

  public DriveTrain() {
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
  }

  public void show(Axis axis) {
    String words = DriveFigures.words(axis);
    String looks = words + axis.drive();
    if (looks.equals(drawn)) {
      return;
    }
    drawn = looks;
    sketch.clear();
    DriveKind kind = axis.drive().kind();
    if (kind == DriveKind.BELT) {
      belt();
    } else if (kind == DriveKind.SCREW) {
      screw();
    } else if (kind == DriveKind.GEAR) {
      gear();
    } else {
      sketch.text(Texts.of("drive.none"), 0, 40, 0, "quiet");
    }
    Double ratio = axis.drive().ratio();
    if (kind != null && ratio != null && ratio != 1) {
      sketch.text(Shown.number(ratio) + " : 1", 54, kind == DriveKind.GEAR ? 28 : 12, 0.5, "small");
    }
    sketch.text(words, 0, HEIGHT - 8, 0, "small");
    setAccessibleText(words);
  }

  private void motor(double x, double y) {
    sketch.circle(x, y, 12, "ink", "paper");
    sketch.text("M", x, y + 4, 0.5, "small");
  }

  private void belt() {
    sketch.circle(42, 48, 26, "ink", "paper");
    motor(42, 48);
    sketch.circle(372, 48, 16, "ink", "paper");
    sketch.circle(372, 48, 3, "solid");
    sketch.line(42, 22, 372, 32, "ink");
    sketch.line(42, 74, 372, 64, "ink");
    for (double x = 70; x < 356; x += 9) {
      double share = (x - 42) / 330;
      sketch.line(x, 74 - share * 10, x, 71 - share * 10, "fine");
      sketch.line(x, 22 + share * 10, x, 25 + share * 10, "fine");
    }
    sketch.box(200, 14, 46, 22, "ink", "paper");
    sketch.text(Texts.of("drive.carriage"), 223, 29, 0.5, "small");
    sketch.line(254, 12, 284, 12, "live");
    sketch.polyline("live", 279, 8, 284, 12, 279, 16);
  }

  private void screw() {
    motor(20, 44);
    sketch.box(36, 36, 14, 16, "ink", "paper");
    sketch.line(50, 39, 400, 39, "ink");
    sketch.line(50, 49, 400, 49, "ink");
    for (double x = 54; x < 396; x += 10) {
      sketch.line(x, 49, x + 5, 39, "fine");
    }
    sketch.box(210, 26, 36, 36, "ink", "paper");
    sketch.text(Texts.of("drive.nut"), 228, 48, 0.5, "small");
    sketch.line(254, 26, 284, 26, "live");
    sketch.polyline("live", 279, 22, 284, 26, 279, 30);
  }

  private void gear() {
    motor(20, 36);
    sketch.line(32, 36, 76, 36, "ink");
    sketch.circle(100, 36, 22, "ink", "paper");
    for (int i = 0; i < 24; i++) {
      double a = Math.PI * 2 * i / 24;
      sketch.line(
          100 + 22 * Math.cos(a),
          36 + 22 * Math.sin(a),
          100 + 26 * Math.cos(a),
          36 + 26 * Math.sin(a),
          "fine");
    }
    sketch.circle(100, 36, 3, "solid");
    sketch.line(40, 65, 400, 65, "thick");
    sketch.circle(100, 76, 9, "ink", "paper");
    sketch.text(Texts.of("drive.filament"), 250, 57, 0, "small");
    sketch.line(306, 53, 336, 53, "live");
    sketch.polyline("live", 331, 49, 336, 53, 331, 57);
  }
}
