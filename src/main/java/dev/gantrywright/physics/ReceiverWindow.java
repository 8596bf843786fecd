package dev.gantrywright.physics;

/**
 * How far a sender's rate may stray before a receiver samples the wrong bit.
 *
 * @param slowRatio slowest sender over receiver rate, below 1
 * @param fastRatio fastest sender over receiver rate, above 1
 */
public record ReceiverWindow(double slowRatio, double fastRatio) {

  /** The slowest error in percent, below zero. */
  public double slowPercent() {
    return (slowRatio - 1) * 100;
  }

  /** The fastest error in percent, above zero. */
  public double fastPercent() {
    return (fastRatio - 1) * 100;
  }

  public boolean accepts(double errorPercent) {
    return errorPercent >= slowPercent() && errorPercent <= fastPercent();
  }

  /**
   * The window of an ideal receiver, which samples each bit in its middle: half a bit over the
   * length up to the middle of the stop bit. Both ends share it.
   *
   * @param frameBits bits of a frame with start and stop bit, 3 or more
   * @return the total mismatch in percent
   */
  public static double idealMismatchPercent(int frameBits) {
    OutOfDomain.between("frame bits", frameBits, 3, 16);
    return 50.0 / (frameBits - 0.5);
  }
}
