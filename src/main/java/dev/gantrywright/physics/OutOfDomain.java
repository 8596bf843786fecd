package dev.gantrywright.physics;

/** A value for which the formula has no meaning; the message is one clear line. */
public final class OutOfDomain extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  public OutOfDomain(String line) {
    super(line);
  }

  static double positive(String what, double value) {
    if (!(finite(what, value) > 0)) {
      throw new OutOfDomain(what + " must be above zero, got " + plain(value));
    }
    return value;
  }

  static long positive(String what, long value) {
    if (value <= 0) {
      throw new OutOfDomain(what + " must be above zero, got " + value);
    }
    return value;
  }

  static double notNegative(String what, double value) {
    if (!(finite(what, value) >= 0)) {
      throw new OutOfDomain(what + " must not be below zero, got " + plain(value));
    }
    return value;
  }

  static double finite(String what, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new OutOfDomain(what + " must be a finite number, got " + value);
    }
    return value;
  }

  static double between(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new OutOfDomain(
          what
              + " must lie between "
              + plain(least)
              + " and "
              + plain(most)
              + ", got "
              + plain(value));
    }
    return value;
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }
}
