package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Loader;
import dev.gantrywright.machine.SuccessSign;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** How an image gets onto the board: image, medium, board, sign of success. */
public final class LoaderSteps extends Region {
  private static final double HEIGHT = 150;
  private static final double STEP = 190;

  private final Sketch sketch = new Sketch();

  public LoaderSteps() {
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
  }

  /**
   * @param taken whether the board has taken the image: until then its sign is drawn open
   */
  public void show(Loader loader, boolean taken) {
    sketch.clear();
    image(0, loader);
    arrow(0);
    medium(STEP, loader);
    arrow(STEP);
    board(2 * STEP);
    arrow(2 * STEP);
    sign(3 * STEP, loader, taken);
    setAccessibleText(
        Texts.of("load.picture", Texts.of("load.medium." + loader.medium().word()))
            + " "
            + Texts.of(taken ? "load.picture.taken" : "load.picture.open"));
  }

  private void arrow(double x) {
    sketch.line(x + 104, 50, x + 162, 50, "live");
    sketch.polyline("live", x + 156, 45, x + 162, 50, x + 156, 55);
  }

  private void image(double x, Loader loader) {
    sketch.polygon("paper", x + 24, 14, x + 66, 14, x + 80, 28, x + 80, 88, x + 24, 88);
    sketch.polyline(
        "ink", x + 66, 14, x + 24, 14, x + 24, 88, x + 80, 88, x + 80, 28, x + 66, 14, x + 66, 28,
        x + 80, 28);
    for (int row = 0; row < 4; row++) {
      sketch.line(x + 32, 42 + row * 10, x + 72, 42 + row * 10, "hair");
    }
    caption(x, Texts.of("load.step.image"), loader.looksFor() == null ? "" : loader.looksFor());
  }

  private void medium(double x, Loader loader) {
    switch (loader.medium()) {
      case CARD -> {
        sketch.polygon("paper", x + 28, 16, x + 64, 16, x + 78, 30, x + 78, 86, x + 28, 86);
        sketch.polyline(
            "ink", x + 28, 16, x + 64, 16, x + 78, 30, x + 78, 86, x + 28, 86, x + 28, 16);
        for (int i = 0; i < 5; i++) {
          sketch.box(x + 34 + i * 8, 22 + (i == 4 ? 8 : 0), 4, 12, "solid");
        }
      }
      case SERIAL -> {
        sketch.box(x + 16, 30, 76, 40, "ink", "paper");
        sketch.line(x + 24, 50, x + 84, 50, "fine");
        sketch.polyline("fine", x + 30, 44, x + 24, 50, x + 30, 56);
        sketch.polyline("fine", x + 78, 44, x + 84, 50, x + 78, 56);
      }
      default -> {
        sketch.box(x + 16, 34, 56, 32, "ink", "paper");
        sketch.box(x + 72, 40, 22, 20, "ink", "paper");
        sketch.box(x + 78, 45, 5, 4, "solid");
        sketch.box(x + 78, 52, 5, 4, "solid");
      }
    }
    caption(x, Texts.of("load.step.medium"), Texts.of("load.short." + loader.medium().word()));
  }

  private void board(double x) {
    sketch.box(x + 14, 18, 80, 66, "ink", "paper");
    sketch.box(x + 42, 38, 24, 24, "solid");
    for (int i = 0; i < 4; i++) {
      sketch.box(x + 20 + i * 14, 23, 8, 9, "fine");
    }
    caption(x, Texts.of("load.step.board"), Texts.of("load.step.restart"));
  }

  private void sign(double x, Loader loader, boolean taken) {
    sketch.circle(x + 54, 50, 22, taken ? "station-settled" : "station-dot");
    if (taken) {
      sketch.polyline("station-tick", x + 44, 50, x + 51, 58, x + 65, 42);
    }
    SuccessSign sign = loader.success() == null ? SuccessSign.NONE : loader.success();
    caption(
        x,
        Texts.of("load.step.sign"),
        Texts.of(
            "load.sign." + sign.word(), loader.renamedTo() == null ? "–" : loader.renamedTo()));
  }

  private void caption(double x, String words, String more) {
    sketch.text(words, x + 54, 112, 0.5, "strong");
    sketch.text(more, x + 54, 130, 0.5, "quiet");
  }
}
