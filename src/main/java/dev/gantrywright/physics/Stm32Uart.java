package dev.gantrywright.physics;

/**
 * The USART of STM32 parts: baud = fck / (8 (2 - OVER8) USARTDIV), USARTDIV kept in sixteenths, or
 * in eighths when oversampling by 8. The clock is that of the USART's bus, not the core's.
 *
 * <p>Source: RM0008 section 27.3.4 and Table 192; RM0390 tables 150 and 152. RM0008 takes the lower
 * divisor in its one exact tie (36 MHz, 115,200 bit/s); so does this class. The upper one is
 * equally right.
 */
public final class Stm32Uart {
  private static final long REGISTER_MOST = 65535;

  private Stm32Uart() {}

  /**
   * The USARTDIV nearest to a rate. Rates beyond the register are answered with its end.
   *
   * @param clockHz clock of the USART in Hz
   * @param baud wanted rate in bit/s
   * @param over8 true when oversampling by 8
   * @return USARTDIV as divisor, the rate it gives and its error
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static BaudSetting setting(long clockHz, long baud, boolean over8) {
    BaudSetting.check(clockHz, baud);
    long parts = over8 ? 8 : 16;
    long kept =
        Rounded.within(Rounded.tieDown(clockHz, baud), parts, over8 ? 32767 : REGISTER_MOST);
    return BaudSetting.of((double) kept / parts, (double) clockHz / kept, baud);
  }

  /**
   * The BRR register of F1, F2 and F4 parts: mantissa in bits 15..4, fraction below, with carry.
   *
   * @param usartDiv USARTDIV, rounded here to what the register holds
   * @param over8 true when oversampling by 8
   */
  public static int register(double usartDiv, boolean over8) {
    int parts = over8 ? 8 : 16;
    OutOfDomain.between("USARTDIV", usartDiv, 1, 4095.9375);
    long kept = Math.round(usartDiv * parts);
    return (int) (kept / parts << 4 | kept % parts);
  }

  /**
   * The BRR register of F0, F3, F7, G0, G4 and H7 parts, where the divisor of oversampling by 8 is
   * written with its lowest four bits shifted right (RM0444, memory).
   */
  public static int shiftedRegister(double usartDiv, boolean over8) {
    OutOfDomain.between("USARTDIV", usartDiv, 1, 4095.9375);
    int kept = (int) Math.round(usartDiv * 16);
    return over8 ? kept & ~0xF | (kept & 0xF) >> 1 : kept;
  }

  /**
   * Most total deviation in percent of sender, receiver and line for 8 data bits with three samples
   * a bit (RM0090 tolerance table, memory).
   *
   * @param over8 true when oversampling by 8
   * @param fraction true where the divisor has a fraction
   */
  public static double tolerancePercent(boolean over8, boolean fraction) {
    if (over8) {
      return fraction ? 2.0 : 2.5;
    }
    return fraction ? 3.33 : 3.75;
  }
}
