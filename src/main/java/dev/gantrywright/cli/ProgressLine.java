package dev.gantrywright.cli;

import java.io.PrintWriter;
import java.util.function.Supplier;

/**
 * How far a long run has come, on one line of the error stream that is written over. Shown only
 * where the error stream is a terminal and the answers go elsewhere: on one screen with them it
 * would tear them apart.
 */
final class ProgressLine {
  private static final long FIRST_NANOS = 500_000_000;
  private static final long EVERY_NANOS = 200_000_000;

  private final PrintWriter err;
  private final int all;
  private final String done;
  private final boolean shown;
  private long next = System.nanoTime() + FIRST_NANOS;
  private int width;

  /** One whose words come with each call. */
  ProgressLine(PrintWriter err) {
    this(err, 0, "");
  }

  ProgressLine(PrintWriter err, int all, String done) {
    this.err = err;
    this.all = all;
    this.done = done;
    this.shown =
        err instanceof BytePrinter && Terminal.is(Terminal.ERR) && !Terminal.is(Terminal.OUT);
  }

  void at(int count) {
    at(() -> done + " " + count + " of " + all);
  }

  void at(Supplier<String> words) {
    if (!shown || System.nanoTime() < next) {
      return;
    }
    next = System.nanoTime() + EVERY_NANOS;
    String text = words.get();
    err.print("\r" + text + " ".repeat(Math.max(0, width - text.length())));
    err.flush();
    width = text.length();
  }

  /** Takes the line away. */
  void clear() {
    if (width > 0) {
      err.print("\r" + " ".repeat(width) + "\r");
      err.flush();
      width = 0;
    }
  }
}
