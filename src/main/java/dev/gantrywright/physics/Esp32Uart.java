package dev.gantrywright.physics;

/**
 * The UART of the ESP32: baud = clock / d, d kept in sixteenths.
 *
 * <p>Source: ESP32 technical reference manual, UART_CLKDIV (memory).
 */
public final class Esp32Uart {
  private static final long DIVISOR_MOST = (1L << 24) - 1;

  private Esp32Uart() {}

  /**
   * The divisor nearest to a rate.
   *
   * @param clockHz clock of the UART in Hz, often 80 MHz
   * @param baud wanted rate in bit/s
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static BaudSetting setting(long clockHz, long baud) {
    BaudSetting.check(clockHz, baud);
    long kept = Rounded.within(Rounded.tieUp(16 * clockHz, baud), 16, DIVISOR_MOST);
    return BaudSetting.of(kept / 16.0, 16.0 * clockHz / kept, baud);
  }
}
