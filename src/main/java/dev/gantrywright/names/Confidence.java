package dev.gantrywright.names;

/**
 * Turns a match into the chance that it is right: a logistic curve over the share of a perfect
 * score and the margin to the next candidate, fitted by hand to the fixture trees that tuning uses.
 */
final class Confidence {
  /** From here on an answer is called sure. */
  static final double SURE = 0.75;

  private static final double BY_SHARE = 7.5;
  private static final double BY_MARGIN = 0.8;
  private static final double MIDDLE_SHARE = 0.55;
  private static final double MOST_MARGIN = 3;
  private static final double START = -0.3;

  private Confidence() {}

  static double of(double share, double margin) {
    double x =
        START
            + BY_SHARE * (share - MIDDLE_SHARE)
            + BY_MARGIN * Math.max(-MOST_MARGIN, Math.min(margin, MOST_MARGIN));
    return Math.round(1000 / (1 + Math.exp(-x))) / 1000.0;
  }
}
