package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Kinematics;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * The machine drawn from its profile, from above and from the side. A click opens the part; the
 * outline beside it does the same for keys and screen readers.
 */
public final class MachinePlan extends Region {
  private final Sketch sketch = new Sketch();
  private final Consumer<String> open;
  private PlanContent content;

  /**
   * @param open called with the id of the part that was clicked
   */
  public MachinePlan(Consumer<String> open) {
    this.open = open;
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinSize(200, 200);
  }

  public void show(PlanContent next) {
    if (next.equals(content)) {
      return;
    }
    content = next;
    draw();
  }

  @Override
  protected void layoutChildren() {
    draw();
  }

  @Override
  protected double computePrefHeight(double width) {
    return 380;
  }

  private void draw() {
    if (content == null || getWidth() <= 0 || getHeight() <= 0) {
      return;
    }
    sketch.clear();
    PlanParts parts = new PlanParts(sketch, content, open);
    double width = getWidth();
    double sideHeight = Math.min(168, getHeight() * 0.36);
    double topHeight = getHeight() - sideHeight - 18;
    if (content.profile().kinematics() == Kinematics.DELTA) {
      new DeltaFromAbove(parts).draw(0, 0, width, topHeight);
    } else {
      new FrameFromAbove(parts).draw(0, 0, width, topHeight);
    }
    new FrameFromSide(parts).draw(0, topHeight + 18, width, sideHeight);
  }
}
