package dev.gantrywright.machine;

/** Numbers as a person writes them. */
public final class Numbers {
  private Numbers() {}

  /** 80 for 80.0, 0.11 for 0.11. */
  public static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
