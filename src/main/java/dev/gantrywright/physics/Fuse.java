package dev.gantrywright.physics;

/**
 * Fuse ratings.
 *
 * <p>Source: UL 248-14 (carries 100 %, opens within 1 h at 135 % and within 2 min at 200 %, so load
 * to 75 %); IEC 60127 fuses may be loaded to 100 %.
 */
public final class Fuse {
  /** Share of its rating to which a UL 248-14 fuse may be loaded for long. */
  public static final double UL_SHARE = 0.75;

  /** Share of its rating to which an IEC 60127 fuse may be loaded for long. */
  public static final double IEC_SHARE = 1.0;

  private Fuse() {}

  /** The smallest rating in A that carries a continuous current. */
  public static double leastRatingAmps(double continuousAmps, double share) {
    OutOfDomain.notNegative("the current in A", continuousAmps);
    if (share > 1) {
      throw new OutOfDomain("the share of the rating must not exceed 1, got " + share);
    }
    return continuousAmps / OutOfDomain.positive("the share of the rating", share);
  }
}
