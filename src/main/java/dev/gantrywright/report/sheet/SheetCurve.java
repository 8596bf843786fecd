package dev.gantrywright.report.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** A temperature over time, drawn with what the PDF writer draws; its figures stand beside it. */
final class SheetCurve {
  private static final double WIDTH = 600;
  private static final double HEIGHT = 110;

  /** Two readings nearer to each other than this look like one. */
  private static final double APART = 1;

  private final Block.Curve curve;
  private final double end;
  private final double low;
  private final double high;

  SheetCurve(Block.Curve curve) {
    this.curve = curve;
    end = seconds(curve.seen()).max().orElse(0);
    low = celsius(curve).min().orElse(0);
    high = celsius(curve).max().orElse(0);
  }

  private static DoubleStream seconds(List<Block.Point> points) {
    return points.stream().mapToDouble(Block.Point::seconds);
  }

  private static DoubleStream celsius(Block.Curve curve) {
    return Stream.concat(curve.seen().stream(), curve.model().stream())
        .mapToDouble(Block.Point::celsius);
  }

  String markup(SheetPictures pictures) {
    Markup out = new Markup();
    out.open("table", "class", "strips").line();
    out.element("caption", curve.caption()).line();
    String degrees = String.format(Locale.ROOT, "%.1f to %.1f °C", low, high);
    out.open("tr").element("th", degrees, "scope", "row").open("td");
    pictures.svg(out, curve.words(), WIDTH, HEIGHT, "curve");
    out.empty("rect", SheetPictures.rect(0, HEIGHT - 1, WIDTH, 1, "#20242b"));
    out.empty("rect", SheetPictures.rect(0, 0, 1, HEIGHT, "#20242b"));
    line(out, curve.seen(), "#0f5b68", "3");
    line(out, curve.model(), "#20242b", "0.8");
    out.close("svg").close("td").close("tr").line();
    out.open("tr").element("th", "time", "scope", "row").open("td");
    out.text("0 s to " + String.format(Locale.ROOT, "%.1f", end) + " s");
    out.close("td").close("tr").line().close("table").line();
    return out.toString();
  }

  private void line(Markup out, List<Block.Point> points, String stroke, String width) {
    if (points.size() < 2) {
      return;
    }
    StringBuilder at = new StringBuilder();
    double drawn = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      double x = end > 0 ? WIDTH * Math.max(0, points.get(i).seconds()) / end : 0;
      if (x - drawn >= APART || i == points.size() - 1) {
        drawn = x;
        at.append(at.isEmpty() ? "" : " ")
            .append(String.format(Locale.ROOT, "%.1f,%.1f", x, y(points.get(i).celsius())));
      }
    }
    out.empty(
        "polyline",
        "points",
        at.toString(),
        "fill",
        "none",
        "stroke",
        stroke,
        "stroke-width",
        width);
  }

  private double y(double celsius) {
    double span = high - low;
    return span > 0 ? (HEIGHT - 2) * (high - celsius) / span + 1 : HEIGHT / 2;
  }
}
