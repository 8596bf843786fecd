package dev.gantrywright.ui.draw;

import dev.gantrywright.prove.Stretch;
import java.util.Arrays;

/** Paints a trace into pixels, one strip an endstop: high is triggered, a gap is not known. */
final class TracePainter {
  private final int[] pixels;
  private final int width;
  private final int height;

  /**
   * @param pixels opaque ARGB, row after row
   */
  TracePainter(int[] pixels, int width, int height) {
    this.pixels = pixels;
    this.width = width;
    this.height = height;
  }

  /** Tones of the picture, opaque ARGB. */
  record Ink(int ground, int rule, int line, int wash, int wrong) {}

  /**
   * @param from left edge, on the monotonic clock
   * @param to right edge
   * @param wrong bit i: whether end i disagrees now
   */
  void paint(Stretch window, int strips, long from, long to, int wrong, Ink ink) {
    Arrays.fill(pixels, 0, width * height, ink.ground());
    seconds(from, to, ink.rule());
    double pitch = (double) height / Math.max(1, strips);
    for (int strip = 0; strip < strips; strip++) {
      int high = (int) (strip * pitch + pitch * 0.26);
      int low = (int) (strip * pitch + pitch * 0.74);
      int line = (wrong >> strip & 1) == 1 ? ink.wrong() : ink.line();
      strip(window, strip, new Rows(high, low), new Span(from, to), line, ink.wash());
    }
  }

  private record Rows(int high, int low) {}

  private record Span(long from, long to) {}

  private void strip(Stretch w, int strip, Rows rows, Span span, int line, int wash) {
    int before = -1;
    for (int i = 0; i < w.nanos().length; i++) {
      if ((w.known()[i] >> strip & 1) == 0) {
        before = -1;
        continue;
      }
      long end = i + 1 < w.nanos().length ? w.nanos()[i + 1] : span.to();
      int x1 = column(w.nanos()[i], span);
      int x2 = Math.max(x1 + 1, column(end, span));
      boolean on = (w.touched()[i] >> strip & 1) == 1;
      int y = on ? rows.high() : rows.low();
      if (on) {
        fill(x1, x2, rows.high(), rows.low(), wash);
      }
      fill(x1, x2, y, y + 2, line);
      if (before >= 0 && before != y) {
        fill(x1, x1 + 2, Math.min(before, y), Math.max(before, y) + 2, line);
      }
      before = y;
    }
  }

  private void seconds(long from, long to, int rule) {
    long second = 1_000_000_000L;
    for (long at = Math.floorDiv(from, second) * second; at <= to; at += second) {
      int x = column(at, new Span(from, to));
      boolean fifth = Math.floorMod(at / second, 5L) == 0;
      for (int y = 0; y < height; y += fifth ? 1 : 4) {
        fill(x, x + 1, y, y + 1, rule);
      }
    }
  }

  private int column(long at, Span span) {
    return (int) ((at - span.from()) * width / Math.max(1, span.to() - span.from()));
  }

  private void fill(int x1, int x2, int y1, int y2, int colour) {
    int left = Math.max(0, x1);
    int right = Math.min(width, x2);
    for (int y = Math.max(0, y1); y < Math.min(height, y2) && left < right; y++) {
      Arrays.fill(pixels, y * width + left, y * width + right, colour);
    }
  }
}
