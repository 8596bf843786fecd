package dev.gantrywright.physics;

/**
 * The gain at which a loop just swings for ever, with the period of that swing, and the tuning
 * rules that start from it.
 *
 * <p>Source: Ziegler and Nichols 1942; Tyreus and Luyben 1992; relay test Åström and Hägglund 1984.
 *
 * @param ku ultimate gain
 * @param puSeconds ultimate period
 */
public record UltimatePoint(double ku, double puSeconds) {

  public UltimatePoint {
    OutOfDomain.positive("the ultimate gain", ku);
    OutOfDomain.positive("the ultimate period in s", puSeconds);
  }

  /**
   * From a relay test: Ku = 4 d / (π a).
   *
   * @param relay half of the relay's output step
   * @param swing half of the reading's swing
   */
  public static UltimatePoint ofRelay(double relay, double swing, double periodSeconds) {
    OutOfDomain.positive("the relay's amplitude", relay);
    OutOfDomain.positive("the swing", swing);
    return new UltimatePoint(4 * relay / (Math.PI * swing), periodSeconds);
  }

  public Gains zieglerNicholsP() {
    return Gains.proportional(ku / 2);
  }

  public Gains zieglerNicholsPi() {
    return new Gains(ku / 2.2, puSeconds / 1.2, 0);
  }

  public Gains zieglerNicholsPid() {
    return new Gains(ku / 1.7, puSeconds / 2, puSeconds / 8);
  }

  /** PI with the decimal of 1942: 0.45 Ku. */
  public Gains classicPi() {
    return new Gains(0.45 * ku, puSeconds / 1.2, 0);
  }

  /** PID with the decimal of 1942: 0.6 Ku. */
  public Gains classicPid() {
    return new Gains(0.6 * ku, puSeconds / 2, puSeconds / 8);
  }

  public Gains tyreusLuybenPi() {
    return new Gains(ku / 3.2, 2.2 * puSeconds, 0);
  }

  public Gains tyreusLuybenPid() {
    return new Gains(ku / 2.2, 2.2 * puSeconds, puSeconds / 6.3);
  }
}
