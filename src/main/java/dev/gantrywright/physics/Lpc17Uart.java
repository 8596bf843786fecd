package dev.gantrywright.physics;

/**
 * The UART of LPC175x/6x parts: baud = PCLK / (16 DL (1 + DIVADDVAL/MULVAL)).
 *
 * <p>Source: UM10360 14.4.12: 1 ≤ MULVAL ≤ 15, 0 ≤ DIVADDVAL ≤ 14, DIVADDVAL below MULVAL, and DLL
 * 3 or more when the divider is on and DLM is 0. The manual's own method stays within 1.1 %; the
 * search here tries every setting, so it is never worse.
 */
public final class Lpc17Uart {
  private static final int DL_MOST = 65535;
  private static final int MUL_MOST = 15;
  private static final int DL_LEAST_WITH_DIVIDER = 3;

  private Lpc17Uart() {}

  /**
   * The setting with the smallest error. Among equals the divider stays off if it can, else the one
   * with the fraction nearest to 1.5 is taken, as in the manual's worked examples.
   *
   * @param pclkHz clock of the UART (PCLK) in Hz
   * @param baud wanted rate in bit/s
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static FractionalSetting setting(long pclkHz, long baud) {
    BaudSetting.check(pclkHz, baud);
    FractionalSetting best = null;
    for (int mul = 1; mul <= MUL_MOST; mul++) {
      for (int add = 0; add < mul; add++) {
        if (add == 0 && mul > 1) {
          continue;
        }
        long wanted = Rounded.tieUp(pclkHz * mul, 16 * baud * (mul + add));
        int least = add == 0 ? 1 : DL_LEAST_WITH_DIVIDER;
        for (long dl = wanted - 1; dl <= wanted + 1; dl++) {
          int kept = (int) Rounded.within(dl, least, DL_MOST);
          FractionalSetting next = of(pclkHz, baud, kept, add, mul);
          if (best == null || better(next, best)) {
            best = next;
          }
        }
      }
    }
    return best;
  }

  private static boolean better(FractionalSetting next, FractionalSetting best) {
    double gain = Math.abs(best.errorPercent()) - Math.abs(next.errorPercent());
    if (Math.abs(gain) > 1e-9) {
      return gain > 0;
    }
    if (best.divAdd() == 0) {
      return false;
    }
    return next.divAdd() == 0 || fromMiddle(next) < fromMiddle(best) - 1e-12;
  }

  private static double fromMiddle(FractionalSetting setting) {
    return Math.abs((double) setting.divAdd() / setting.mul() - 0.5);
  }

  private static FractionalSetting of(long pclkHz, long baud, int dl, int add, int mul) {
    double actual = baud(pclkHz, dl, add, mul);
    return new FractionalSetting(dl, add, mul, actual, BaudSetting.errorPercent(actual, baud));
  }

  /**
   * The rate in bit/s of one setting.
   *
   * @throws OutOfDomain if the manual does not allow the setting
   */
  public static double baud(long pclkHz, int dl, int divAdd, int mul) {
    OutOfDomain.positive("the clock in Hz", pclkHz);
    if (!legal(dl, divAdd, mul)) {
      throw new OutOfDomain(
          "DL " + dl + " with fraction " + divAdd + "/" + mul + " is not allowed by the manual");
    }
    return (double) (pclkHz * mul) / (16.0 * dl * (mul + divAdd));
  }

  /** Whether the manual allows the setting. */
  public static boolean legal(int dl, int divAdd, int mul) {
    boolean fraction = mul >= 1 && mul <= MUL_MOST && divAdd >= 0 && divAdd < mul;
    return fraction && dl >= (divAdd == 0 ? 1 : DL_LEAST_WITH_DIVIDER) && dl <= DL_MOST;
  }
}
