package dev.gantrywright.physics;

/**
 * The UART of SAM3X parts, whose divisor is a whole number, and the SERCOM of SAM D parts.
 *
 * <p>Source: SAM3X/A data sheet, UART_BRGR (baud = MCK / (16 CD)); SAM D5x/E5x data sheet, SERCOM
 * arithmetic baud generator (BAUD = 65536 (1 - 16 baud/fref)); both from memory.
 */
public final class SamUart {
  private static final int STEPS = 65536;

  private SamUart() {}

  /**
   * The whole divisor of a SAM3X UART nearest to a rate.
   *
   * @param clockHz master clock in Hz, often 84 MHz
   * @param baud wanted rate in bit/s
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static BaudSetting setting(long clockHz, long baud) {
    BaudSetting.check(clockHz, baud);
    long kept = Rounded.within(Rounded.tieUp(clockHz, 16 * baud), 1, STEPS - 1);
    return BaudSetting.of(kept, clockHz / (16.0 * kept), baud);
  }

  /**
   * The BAUD register of a SAM D SERCOM, 16 samples a bit, nearest to a rate.
   *
   * @param clockHz clock of the SERCOM in Hz, often 48 MHz
   * @param baud wanted rate in bit/s
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static BaudSetting sercomSetting(long clockHz, long baud) {
    BaudSetting.check(clockHz, baud);
    long off = Rounded.tieUp(STEPS * 16L * baud, clockHz);
    long register = Rounded.within(STEPS - off, 0, STEPS - 1);
    return BaudSetting.of(register, clockHz / 16.0 * (1 - (double) register / STEPS), baud);
  }
}
