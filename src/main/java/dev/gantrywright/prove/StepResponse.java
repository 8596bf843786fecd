package dev.gantrywright.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a heater's temperature followed a step of its power.
 *
 * @param heater name of the heater
 * @param powerStep share of full power that was switched on, above 0 up to 1
 * @param points in order of time
 */
public record StepResponse(String heater, double powerStep, List<Point> points) {
  /**
   * One reading.
   *
   * @param seconds since the power was switched on
   */
  public record Point(double seconds, double celsius) {}

  public StepResponse {
    if (!(powerStep > 0 && powerStep <= 1)) {
      throw new IllegalArgumentException(
          "the power step is " + powerStep + "; it lies above 0 up to 1");
    }
    points = List.copyOf(points);
  }

  /**
   * True when the temperature hardly rises any more: over the last fifth of the time by less than 2
   * % of the whole rise (our limit). Before that a fit would be a guess.
   */
  public boolean settled() {
    if (points.size() < 10) {
      return false;
    }
    Point last = points.get(points.size() - 1);
    double from = last.seconds() - (last.seconds() - points.get(0).seconds()) / 5;
    double then =
        points.stream().filter(p -> p.seconds() >= from).findFirst().orElse(last).celsius();
    double rise = last.celsius() - points.get(0).celsius();
    return rise > 0 && Math.abs(last.celsius() - then) < 0.02 * rise;
  }

  /** Seconds and degrees, one reading a row. */
  public String csv() {
    StringBuilder csv = new StringBuilder("seconds,celsius\n");
    points.forEach(
        p -> csv.append(String.format(Locale.ROOT, "%.3f,%.3f\n", p.seconds(), p.celsius())));
    return csv.toString();
  }

  /**
   * Reads what {@link #csv} writes, or any two columns of numbers under a heading.
   *
   * @throws IllegalArgumentException naming the row
   */
  public static StepResponse ofCsv(String heater, double powerStep, String csv) {
    List<Point> points = new ArrayList<>();
    List<String> rows = csv.lines().toList();
    for (int i = 1; i < rows.size(); i++) {
      String[] columns = rows.get(i).split("[,;\\t]");
      try {
        Point point =
            new Point(
                Double.parseDouble(columns[0].strip()), Double.parseDouble(columns[1].strip()));
        if (!points.isEmpty() && point.seconds() < points.get(points.size() - 1).seconds()) {
          throw new IllegalArgumentException("row " + (i + 1) + " goes back in time");
        }
        points.add(point);
      } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
        throw new IllegalArgumentException(
            "row " + (i + 1) + " is '" + rows.get(i) + "'; seconds and degrees are wanted", e);
      }
    }
    return new StepResponse(heater, powerStep, points);
  }
}
