package dev.gantrywright.physics;

/**
 * The PL011 UART of the RP2040: baud = clk_peri / (16 d), d kept in 1/64.
 *
 * <p>Source: RP2040 data sheet section 4.2.7.1 and the PL011 manual (memory).
 */
public final class Rp2040Uart {
  private static final long DIVISOR_MOST = 65535L * 64;

  private Rp2040Uart() {}

  /**
   * The divisor nearest to a rate.
   *
   * @param clockHz peripheral clock in Hz, often 125 MHz
   * @param baud wanted rate in bit/s
   * @return the divisor IBRD + FBRD/64, the rate it gives and its error
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static BaudSetting setting(long clockHz, long baud) {
    BaudSetting.check(clockHz, baud);
    long kept = Rounded.within(Rounded.tieUp(clockHz * 4, baud), 64, DIVISOR_MOST);
    return BaudSetting.of(kept / 64.0, clockHz * 4.0 / kept, baud);
  }
}
