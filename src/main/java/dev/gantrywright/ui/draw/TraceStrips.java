package dev.gantrywright.ui.draw;

import dev.gantrywright.ui.state.TraceLook;
import dev.gantrywright.ui.theme.Tones;
import java.nio.IntBuffer;
import java.util.OptionalLong;
import javafx.animation.AnimationTimer;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;

/**
 * The picture of endstop states over time, with times of day below it and the user's marks in it.
 * Painted pixel by pixel: while it runs with each pulse that moves it, while it is held once.
 */
public final class TraceStrips extends Region {
  private static final double NOWHERE = -1;

  private final TraceLook look;
  private final ImageView view = new ImageView();
  private final TimeRule times;
  private final TraceFlags flags = new TraceFlags();
  private final AnimationTimer timer;
  private PixelBuffer<IntBuffer> buffer;
  private TracePainter painter;
  private TracePainter.Ink ink;
  private int wrong;
  private boolean inWindow;
  private double pointer = NOWHERE;
  private boolean stale = true;
  private long left;
  private long pixelNanos = 1;
  private long paintings;

  public TraceStrips(TraceLook look) {
    this.look = look;
    times = new TimeRule(look);
    getChildren().addAll(view, times, flags);
    getStyleClass().addAll("trace", "touchable");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    timer =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            paint();
          }
        };
  }

  /** What is needed in height for so many strips. */
  public static double height(int strips, double each) {
    return strips * each + TimeRule.HEIGHT;
  }

  /** Shows the trace in these tones. */
  public void show(Tones tones) {
    ink =
        new TracePainter.Ink(
            tones.argb("surface"),
            tones.argb("hairline"),
            tones.argb("ink"),
            tones.argb("accentWash"),
            tones.argb("error"));
    anew();
  }

  /** Which ends disagree now, as bits in the order of the trace; a held picture stays as it was. */
  public void wrong(int bits) {
    wrong = bits;
  }

  /** The place or the span changed: paints, also where the picture is held. */
  public void anew() {
    stale = true;
    run();
    paint();
  }

  /** The marks changed, or where the keys point: nothing of the picture itself. */
  public void flagged() {
    if (buffer != null && ink != null) {
      flags.show(look.list(), this::place, buffer.getWidth(), buffer.getHeight());
      read();
    }
  }

  /** Paints while it is in a window; nobody sees it elsewhere. */
  public void inWindow(boolean in) {
    inWindow = in;
    run();
  }

  private void run() {
    if (inWindow && look.held().get().isEmpty()) {
      timer.start();
    } else {
      timer.stop();
    }
  }

  /** How often it was painted. */
  public long paintings() {
    return paintings;
  }

  private void paint() {
    if (buffer == null || ink == null) {
      return;
    }
    int width = buffer.getWidth();
    long pixel = Math.max(1, look.spanNanos() / width);
    // Moving by less than a pixel changes nothing; by whole ones, nothing trembles.
    long from = (Math.floorDiv(look.right() - 1, pixel) + 1 - width) * pixel;
    if (!stale && from == left && pixel == pixelNanos) {
      return;
    }
    stale = false;
    left = from;
    pixelNanos = pixel;
    TracePainter.Rule rule = times.lines(pixel);
    long to = from + pixel * width;
    painter.paint(look.shown(), look.trace().ends().size(), from, to, rule, wrong, ink);
    buffer.updateBuffer(whole -> null);
    paintings++;
    times.show(rule, from, pixel, width, buffer.getHeight());
    flagged();
  }

  private double place(long moment) {
    return (double) (moment - left) / pixelNanos;
  }

  /** The moment at so many pixels from the left edge. */
  public long moment(double x) {
    return left + Math.round(x * pixelNanos);
  }

  /** How long a pixel is. */
  public long pixelNanos() {
    return pixelNanos;
  }

  /** The pointer is here; a negative place for nowhere. */
  public void pointer(double x) {
    pointer = x;
    read();
  }

  /** The moment that is read: under the pointer, else where the keys point. */
  public OptionalLong reading() {
    if (pointer >= 0 && buffer != null && pointer < buffer.getWidth()) {
      return OptionalLong.of(moment(pointer));
    }
    return look.cursor().get();
  }

  private void read() {
    if (buffer != null) {
      double x = reading().isPresent() ? place(reading().getAsLong()) : NOWHERE;
      flags.read(x, buffer.getWidth(), buffer.getHeight());
    }
  }

  @Override
  protected void layoutChildren() {
    int width = (int) Math.max(1, getWidth());
    int height = (int) Math.max(1, getHeight() - TimeRule.HEIGHT);
    if (buffer == null || buffer.getWidth() != width || buffer.getHeight() != height) {
      IntBuffer pixels = IntBuffer.allocate(width * height);
      buffer = new PixelBuffer<>(width, height, pixels, PixelFormat.getIntArgbPreInstance());
      painter = new TracePainter(pixels.array(), width, height);
      view.setImage(new WritableImage(buffer));
      stale = true;
      paint();
    }
  }
}
