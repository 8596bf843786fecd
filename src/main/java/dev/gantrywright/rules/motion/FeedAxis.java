package dev.gantrywright.rules.motion;

/** Tells the axes that feed filament from those that move the machine. */
final class FeedAxis {
  private FeedAxis() {}

  /** Whether the axis bears a feed's name: e, e0, e1 … */
  static boolean named(String axis) {
    return axis.startsWith("e") && axis.chars().skip(1).allMatch(c -> c >= '0' && c <= '9');
  }
}
