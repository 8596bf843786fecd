package dev.gantrywright.physics;

/** Quotients of whole numbers rounded exactly, so that a tie is seen as a tie. */
final class Rounded {
  private Rounded() {}

  /** The nearest whole number to a/b; a tie goes up. Both above zero. */
  static long tieUp(long a, long b) {
    return Math.floorDiv(2 * a + b, 2 * b);
  }

  /** The nearest whole number to a/b; a tie goes down. Both above zero. */
  static long tieDown(long a, long b) {
    return -Math.floorDiv(b - 2 * a, 2 * b);
  }

  static long within(long value, long least, long most) {
    return Math.max(least, Math.min(most, value));
  }
}
