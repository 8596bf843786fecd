package dev.gantrywright.ui.draw;

import dev.gantrywright.prove.Stretch;
import dev.gantrywright.ui.state.Trace;
import dev.gantrywright.ui.theme.Tones;
import java.nio.IntBuffer;
import java.util.function.LongSupplier;
import javafx.animation.AnimationTimer;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;

/** The live picture of endstop states over time, painted pixel by pixel on every pulse. */
public final class TraceStrips extends Region {
  private final ImageView view = new ImageView();
  private final LongSupplier nanoTime;
  private final AnimationTimer timer;
  private final long spanNanos;
  private PixelBuffer<IntBuffer> buffer;
  private TracePainter painter;
  private Trace trace;
  private TracePainter.Ink ink;
  private int wrong;
  private long painted = Long.MIN_VALUE;

  /**
   * @param nanoTime the clock of the samples
   * @param seconds how much time the width shows
   */
  public TraceStrips(LongSupplier nanoTime, double seconds) {
    this.nanoTime = nanoTime;
    this.spanNanos = (long) (seconds * 1e9);
    getChildren().add(view);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    timer =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            paint();
          }
        };
  }

  /** Shows this trace in these tones; runs while it is in a window. */
  public void show(Trace next, Tones tones) {
    trace = next;
    ink =
        new TracePainter.Ink(
            tones.argb("surface"),
            tones.argb("hairline"),
            tones.argb("ink"),
            tones.argb("accentWash"),
            tones.argb("error"));
    painted = Long.MIN_VALUE;
  }

  /** Which ends disagree now, as bits in the order of the trace. */
  public void wrong(int bits) {
    wrong = bits;
  }

  public void start() {
    timer.start();
  }

  public void stop() {
    timer.stop();
  }

  /** Paints the present moment. */
  public void paint() {
    if (trace == null || buffer == null || ink == null) {
      return;
    }
    long now = nanoTime.getAsLong();
    // Moving by less than a pixel changes nothing.
    if (painted != Long.MIN_VALUE && now - painted < spanNanos / buffer.getWidth()) {
      return;
    }
    painted = now;
    Stretch window = trace.since(now - spanNanos);
    painter.paint(window, trace.ends().size(), now - spanNanos, now, wrong, ink);
    buffer.updateBuffer(whole -> null);
  }

  @Override
  protected void layoutChildren() {
    int width = (int) Math.max(1, getWidth());
    int height = (int) Math.max(1, getHeight());
    if (buffer == null || buffer.getWidth() != width || buffer.getHeight() != height) {
      IntBuffer pixels = IntBuffer.allocate(width * height);
      buffer = new PixelBuffer<>(width, height, pixels, PixelFormat.getIntArgbPreInstance());
      painter = new TracePainter(pixels.array(), width, height);
      view.setImage(new WritableImage(buffer));
      painted = Long.MIN_VALUE;
      paint();
    }
  }
}
