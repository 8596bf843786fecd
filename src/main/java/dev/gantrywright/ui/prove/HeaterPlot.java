package dev.gantrywright.ui.prove;

import dev.gantrywright.app.ThermalStudy;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.ui.draw.Sketch;
import dev.gantrywright.ui.state.Texts;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;

/** Temperature over time: recorded, and as the model has it. */
final class HeaterPlot extends Pane {
  private static final double WIDTH = 520;
  private static final double HEIGHT = 180;

  /** Room at the left for the degrees, below for the seconds. */
  private static final double LEFT = 64;

  private static final double FOOT = 24;

  /** As far right as anything is drawn. */
  static final double WHOLE = LEFT + WIDTH + 1;

  private final Sketch plot = new Sketch();

  HeaterPlot() {
    getChildren().add(plot);
    setMinHeight(HEIGHT + FOOT);
    setPrefSize(WHOLE, HEIGHT + FOOT);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(Texts.of("heater.plot"));
  }

  /**
   * Draws a run.
   *
   * @param limit temperature above which the run ends, °C; drawn where it comes into sight
   */
  void show(List<StepResponse.Point> seen, Optional<ThermalStudy> study, double limit) {
    plot.clear();
    if (seen.isEmpty()) {
      return;
    }
    double end = Math.max(1, seen.get(seen.size() - 1).seconds());
    double low = seen.stream().mapToDouble(StepResponse.Point::celsius).min().orElseThrow();
    double high = seen.stream().mapToDouble(StepResponse.Point::celsius).max().orElseThrow();
    double top = Math.max(high, low + 1);
    plot.line(LEFT, HEIGHT, LEFT + WIDTH, HEIGHT, "fine");
    plot.line(LEFT, 0, LEFT, HEIGHT, "fine");
    plot.polyline("faint", line(seen, end, low, top - low));
    study.ifPresent(found -> plot.polyline("live", line(found.fitted(), end, low, top - low)));
    if (limit > low && limit <= top) {
      double y = HEIGHT - HEIGHT * (limit - low) / (top - low);
      plot.line(LEFT, y, LEFT + WIDTH, y, "wrong");
    }
    plot.text(Texts.of("heater.high", degrees(top)), LEFT - 8, 12, 1, "small");
    plot.text(Texts.of("heater.high", degrees(low)), LEFT - 8, HEIGHT, 1, "small");
    plot.text("0", LEFT, HEIGHT + 16, 0, "small");
    plot.text(Texts.of("heater.seconds", degrees(end)), LEFT + WIDTH, HEIGHT + 16, 1, "small");
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static double[] line(
      List<StepResponse.Point> points, double end, double low, double span) {
    double[] xy = new double[points.size() * 2];
    for (int i = 0; i < points.size(); i++) {
      xy[2 * i] = LEFT + WIDTH * points.get(i).seconds() / end;
      xy[2 * i + 1] = HEIGHT - HEIGHT * (points.get(i).celsius() - low) / span;
    }
    return xy;
  }
}
