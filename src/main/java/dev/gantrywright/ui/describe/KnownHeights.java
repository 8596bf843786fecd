package dev.gantrywright.ui.describe;

import java.util.function.DoubleUnaryOperator;

/**
 * How high a row or form is at the width that it was asked for last. The toolkit keeps no height
 * that depends on a width and asks for each several times in one layout pass; of a form only the
 * row in hand changes with a keystroke. Whoever uses it forgets with every request for layout.
 */
final class KnownHeights {
  private double leastAt = Double.NaN;
  private double least;
  private double preferredAt = Double.NaN;
  private double preferred;

  void forget() {
    leastAt = Double.NaN;
    preferredAt = Double.NaN;
  }

  double least(double width, DoubleUnaryOperator measure) {
    if (leastAt != width) {
      least = measure.applyAsDouble(width);
      leastAt = width;
    }
    return least;
  }

  double preferred(double width, DoubleUnaryOperator measure) {
    if (preferredAt != width) {
      preferred = measure.applyAsDouble(width);
      preferredAt = width;
    }
    return preferred;
  }
}
