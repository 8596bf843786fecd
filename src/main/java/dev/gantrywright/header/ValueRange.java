package dev.gantrywright.header;

/**
 * The range that a comment allows for a number, both ends included, in the unit of the setting.
 *
 * @param min smallest allowed value
 * @param max largest allowed value
 */
public record ValueRange(double min, double max) {
  public ValueRange {
    if (!(min <= max)) {
      throw new IllegalArgumentException("range " + min + ".." + max);
    }
  }

  /** Whether the value lies inside. */
  public boolean contains(double value) {
    return value >= min && value <= max;
  }
}
