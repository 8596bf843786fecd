package dev.gantrywright.report.sheet;

import java.util.Locale;

/**
 * The pictures of a sheet as SVG: rectangles, lines, polygons and circles only, which is what the
 * PDF writer draws.
 */
final class SheetPictures {
  private static final double WIDTH = 600;
  private static final double HEIGHT = 14;
  private static final double LEAST_WIDTH = 1.5;

  private final boolean forPdf;

  SheetPictures(boolean forPdf) {
    this.forPdf = forPdf;
  }

  /** A mark; its word is its label. */
  String sign(Sign sign) {
    Markup out = new Markup();
    svg(out, sign.word(), 10, 10, "sign");
    switch (sign) {
      case ERROR -> out.empty("rect", rect(1, 1, 8, 8, "#9b2626"));
      case WARNING -> out.empty("polygon", "points", "5,0.5 9.8,9.3 0.2,9.3", "fill", "#8a5a00");
      case NOTE -> out.empty("circle", "cx", "5", "cy", "5", "r", "4", "fill", "#3a5580");
      case FINE ->
          out.empty(
              "polyline",
              "points",
              "1,5.5 4,8.5 9,1.5",
              "fill",
              "none",
              "stroke",
              "#0f5b68",
              "stroke-width",
              "1.8");
      default ->
          out.empty(
              "circle",
              "cx",
              "5",
              "cy",
              "5",
              "r",
              "3.8",
              "fill",
              "none",
              "stroke",
              "#20242b",
              "stroke-width",
              "1.2");
    }
    return out.close("svg").text(" ").toString();
  }

  static String[] rect(double x, double y, double width, double height, String fill) {
    return new String[] {
      "x", number(x), "y", number(y), "width", number(width), "height", number(height), "fill", fill
    };
  }

  void svg(Markup out, String label, double width, double height, String kind) {
    String box = "0 0 " + number(width) + " " + number(height);
    if (forPdf) {
      out.open(
          "svg",
          "alt",
          label,
          "viewBox",
          box,
          "width",
          number(width),
          "height",
          number(height),
          "class",
          kind);
    } else {
      out.open("svg", "role", "img", "aria-label", label, "viewBox", box, "class", kind);
    }
  }

  /** One row an endstop: raised where it read triggered; the axis of time below. */
  String strips(Block.Strips strips) {
    Markup out = new Markup();
    out.open("table", "class", "strips").line();
    out.element("caption", "Endstop states while they were pressed; raised is triggered").line();
    for (Block.Strip strip : strips.strips()) {
      out.open("tr").element("th", strip.name(), "scope", "row").open("td");
      strip(out, strip, strips.seconds());
      out.close("td").close("tr").line();
    }
    out.open("tr").element("th", "time", "scope", "row").open("td");
    out.text("0 s to " + String.format(Locale.ROOT, "%.1f", strips.seconds()) + " s");
    out.close("td").close("tr").line().close("table").line();
    return out.toString();
  }

  private void strip(Markup out, Block.Strip strip, double seconds) {
    svg(out, strip.name() + ": " + strip.words(), WIDTH, HEIGHT, "strip");
    double scale = seconds > 0 ? WIDTH / seconds : 0;
    out.empty("rect", rect(0, HEIGHT - 1, WIDTH, 1, "#20242b"));
    for (Block.Span span : strip.triggered()) {
      double from = span.from() * scale;
      double width = Math.max(LEAST_WIDTH, (span.to() - span.from()) * scale);
      out.empty("rect", rect(Math.min(from, WIDTH - width), 2, width, HEIGHT - 3, "#0f5b68"));
    }
    out.close("svg");
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%.2f", value);
  }
}
