package dev.gantrywright.ui.draw;

import dev.gantrywright.prove.Stretch;
import java.util.Arrays;

/** Paints a trace into pixels, one strip an endstop: high is triggered, a gap is not known. */
final class TracePainter {
  private static final int UNKNOWN = 0;
  private static final int OFF = 1;
  private static final int ON = 2;

  /** How thick a line is, pixels. */
  private static final int STROKE = 2;

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
   * Lines at round times of day.
   *
   * @param epochNanos nanoseconds since 1970 less those of the monotonic clock
   * @param fine from line to line, nanoseconds
   * @param bold from one bold line to the next
   */
  record Rule(long epochNanos, long fine, long bold) {}

  /**
   * @param from left edge, on the monotonic clock
   * @param to right edge
   * @param wrong bit i: whether end i disagrees now
   */
  void paint(Stretch window, int strips, long from, long to, Rule rule, int wrong, Ink ink) {
    Arrays.fill(pixels, 0, width * height, ink.ground());
    lines(from, to, rule, ink.rule());
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

  /**
   * One strip. What does not change is one stroke, however many samples say so; of the changes
   * within a column one upright is drawn.
   */
  private void strip(Stretch w, int strip, Rows rows, Span span, int line, int wash) {
    long[] nanos = w.nanos();
    int before = UNKNOWN;
    int upright = Integer.MIN_VALUE;
    for (int i = 0; i < nanos.length; ) {
      int state = state(w, i, strip);
      int next = i + 1;
      while (next < nanos.length && state(w, next, strip) == state) {
        next++;
      }
      int x1 = column(nanos[i], span);
      int x2 = Math.max(x1 + 1, column(next < nanos.length ? nanos[next] : span.to(), span));
      boolean changed = before != UNKNOWN && state != UNKNOWN;
      if (changed && upright != x1) {
        fill(x1, x1 + STROKE, rows.high(), rows.low() + STROKE, line);
        upright = x1;
      }
      int rest = changed ? x1 + STROKE : x1;
      if (state == ON) {
        fill(rest, x2, rows.high() + STROKE, rows.low(), wash);
      }
      if (state != UNKNOWN) {
        int y = state == ON ? rows.high() : rows.low();
        fill(x1, x2, y, y + STROKE, line);
      }
      before = state;
      i = next;
    }
  }

  private static int state(Stretch w, int sample, int strip) {
    return (w.known()[sample] >> strip & 1) == 0
        ? UNKNOWN
        : (w.touched()[sample] >> strip & 1) == 1 ? ON : OFF;
  }

  private void lines(long from, long to, Rule rule, int colour) {
    long begin = Math.floorDiv(from + rule.epochNanos(), rule.fine()) * rule.fine();
    for (long at = begin; at <= to + rule.epochNanos(); at += rule.fine()) {
      int x = column(at - rule.epochNanos(), new Span(from, to));
      boolean bold = Math.floorMod(at, rule.bold()) == 0;
      for (int y = 0; y < height; y += bold ? 1 : 4) {
        fill(x, x + 1, y, y + 1, colour);
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
