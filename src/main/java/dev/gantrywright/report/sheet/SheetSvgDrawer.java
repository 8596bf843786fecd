package dev.gantrywright.report.sheet;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Draws the few SVG shapes that a sheet's pictures are made of. */
final class SheetSvgDrawer implements SVGDrawer {
  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext css, double width, double height, double dotsPerPixel) {
    String[] view = svg.getAttribute("viewBox").split(" ");
    double viewWidth = Double.parseDouble(view[2]);
    double viewHeight = Double.parseDouble(view[3]);
    double wide = width >= 0 ? width : viewWidth * dotsPerPixel;
    double high = height >= 0 ? height : viewHeight * dotsPerPixel;
    return new Picture(svg, wide, high, wide / viewWidth, high / viewHeight);
  }

  private record Picture(Element svg, double width, double height, double scaleX, double scaleY)
      implements SVGImage {
    @Override
    public int getIntrinsicWidth() {
      return (int) Math.round(width);
    }

    @Override
    public int getIntrinsicHeight() {
      return (int) Math.round(height);
    }

    @Override
    public void drawSVG(OutputDevice out, RenderingContext context, double x, double y) {
      AffineTransform place = AffineTransform.getTranslateInstance(x, y);
      place.scale(scaleX, scaleY);
      NodeList parts = svg.getChildNodes();
      for (int i = 0; i < parts.getLength(); i++) {
        Node part = parts.item(i);
        if (part instanceof Element element) {
          draw(out, element, place);
        }
      }
    }

    private void draw(OutputDevice out, Element element, AffineTransform place) {
      Shape shape = place.createTransformedShape(shape(element));
      String fill = element.getAttribute("fill");
      String stroke = element.getAttribute("stroke");
      if (!fill.isEmpty() && !fill.equals("none")) {
        out.setColor(colour(fill));
        out.fill(shape);
      }
      if (!stroke.isEmpty()) {
        out.setColor(colour(stroke));
        out.setStroke(new BasicStroke((float) (number(element, "stroke-width") * scaleX)));
        out.draw(shape);
      }
    }
  }

  private static Shape shape(Element element) {
    return switch (element.getTagName()) {
      case "rect" ->
          new Rectangle2D.Double(
              number(element, "x"),
              number(element, "y"),
              number(element, "width"),
              number(element, "height"));
      case "circle" -> circle(number(element, "cx"), number(element, "cy"), number(element, "r"));
      default -> path(element);
    };
  }

  private static Shape circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private static Shape path(Element element) {
    Path2D path = new Path2D.Double();
    for (String point : element.getAttribute("points").split(" ")) {
      String[] xy = point.split(",");
      double x = Double.parseDouble(xy[0]);
      double y = Double.parseDouble(xy[1]);
      if (path.getCurrentPoint() == null) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    if (element.getTagName().equals("polygon")) {
      path.closePath();
    }
    return path;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private static FSRGBColor colour(String hex) {
    return new FSRGBColor(Integer.parseInt(hex.substring(1), 16));
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> faces, SharedContext context) {}

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

  @Override
  public void close() {}
}
