package dev.gantrywright.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Draws the program's icon: a gantry over its bed with a tick hanging from the carriage. Run its
 * main method to write the sizes that the window and the installers take.
 */
final class IconPictures {
  private static final Color GROUND = new Color(0x125C66);
  private static final Color LINE = new Color(0xFBFAF4);
  private static final Color SIGN = new Color(0xF2C14E);

  private IconPictures() {}

  public static void main(String[] args) throws IOException {
    Path window = Path.of("src/main/resources/dev/gantrywright/ui/icon");
    Path installers = Path.of("src/main/packaging");
    Files.createDirectories(window);
    Files.createDirectories(installers);
    for (int size : new int[] {16, 32, 64, 128, 256}) {
      ImageIO.write(draw(size), "png", window.resolve("icon-" + size + ".png").toFile());
    }
    ImageIO.write(draw(512), "png", installers.resolve("gantrywright.png").toFile());
  }

  private static BufferedImage draw(int size) {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    double u = size / 64.0;
    g.setColor(GROUND);
    g.fill(new RoundRectangle2D.Double(2 * u, 2 * u, 60 * u, 60 * u, 12 * u, 12 * u));
    g.setColor(LINE);
    g.setStroke(new BasicStroke((float) (5 * u), BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
    Path2D frame = new Path2D.Double();
    frame.moveTo(14 * u, 50 * u);
    frame.lineTo(14 * u, 16 * u);
    frame.lineTo(50 * u, 16 * u);
    frame.lineTo(50 * u, 50 * u);
    g.draw(frame);
    g.draw(line(10 * u, 52 * u, 54 * u, 52 * u));
    g.setColor(SIGN);
    g.setStroke(new BasicStroke((float) (5 * u), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    Path2D tick = new Path2D.Double();
    tick.moveTo(24 * u, 32 * u);
    tick.lineTo(30 * u, 39 * u);
    tick.lineTo(41 * u, 25 * u);
    g.draw(tick);
    g.dispose();
    return image;
  }

  private static Path2D line(double x1, double y1, double x2, double y2) {
    Path2D line = new Path2D.Double();
    line.moveTo(x1, y1);
    line.lineTo(x2, y2);
    return line;
  }
}
