package dev.gantrywright.ui.state;

/** How often something happens, over about two seconds. */
final class RateMeter {
  private static final long SPAN = 2_000_000_000L;

  private long startNanos = Long.MIN_VALUE;
  private long startCount;
  private double hertz;

  /**
   * @param nanos now
   * @param count how often it has happened so far
   */
  void count(long nanos, long count) {
    if (startNanos == Long.MIN_VALUE || count < startCount) {
      startNanos = nanos;
      startCount = count;
      hertz = 0;
      return;
    }
    long elapsed = nanos - startNanos;
    if (elapsed > SPAN / 4) {
      hertz = (count - startCount) * 1e9 / elapsed;
    }
    if (elapsed > SPAN) {
      startNanos = nanos;
      startCount = count;
    }
  }

  double hertz() {
    return hertz;
  }
}
