package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Kinematics;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * The machine drawn from its profile, from above and from the side. A click opens the part; the
 * outline beside it does the same for keys and screen readers.
 */
public final class MachinePlan extends Region {
  /** In less height the words of two views would run into each other: that from above stays. */
  private static final double LEAST_FOR_BOTH = 290;

  private final Sketch sketch = new Sketch();
  private final MarkLayer marks = new MarkLayer();
  private final Consumer<String> open;
  private PlanContent content;
  private List<Object> drawn = List.of();
  private double drawnWidth = -1;
  private double drawnHeight = -1;

  /**
   * @param open called with the id of the part that was clicked
   */
  public MachinePlan(Consumer<String> open) {
    this.open = open;
    setMinSize(200, 200);
    getChildren().addAll(sketch, marks);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
  }

  public void show(PlanContent next) {
    List<Object> looks = PlanLooks.of(next);
    content = next;
    if (!looks.equals(drawn)) {
      drawn = looks;
      draw();
    } else {
      marks.show(next.marks());
    }
  }

  @Override
  protected void layoutChildren() {
    if (getWidth() != drawnWidth || getHeight() != drawnHeight) {
      draw();
      sketch.dress();
      marks.applyCss();
    }
  }

  @Override
  protected double computePrefHeight(double width) {
    return 380;
  }

  private void draw() {
    if (content == null || getWidth() <= 0 || getHeight() <= 0) {
      return;
    }
    drawnWidth = getWidth();
    drawnHeight = getHeight();
    sketch.clear();
    marks.clear();
    PlanParts parts = new PlanParts(sketch, content, marks, open);
    if (drawnHeight < LEAST_FOR_BOTH) {
      above(parts, Math.min(drawnHeight, drawnWidth - 44));
    } else {
      both(parts);
    }
    marks.show(content.marks());
  }

  private void both(PlanParts parts) {
    double width = getWidth();
    double sideHeight = Math.min(width * 0.58, getHeight() * 0.36);
    // Never taller than the width can fill: the two views stay together.
    double topHeight = Math.min(getHeight() - sideHeight - 18, width - 44);
    above(parts, topHeight);
    new FrameFromSide(parts).draw(0, topHeight + 18, width, sideHeight);
  }

  private void above(PlanParts parts, double height) {
    if (content.profile().kinematics() == Kinematics.DELTA) {
      new DeltaFromAbove(parts).draw(0, 0, getWidth(), height);
    } else {
      new FrameFromAbove(parts).draw(0, 0, getWidth(), height);
    }
  }
}
