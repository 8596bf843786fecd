package dev.gantrywright.physics;

import java.util.List;

/**
 * The USART of AVR parts: baud = f / (m (UBRR + 1)) with m = 16, or 8 at double speed.
 *
 * <p>Source: ATmega640/1280/1281/2560/2561 data sheet, "Internal Clock Generation" and Table 109;
 * ATmega48A..328P data sheet DS40002061A section 20.8.3 (receiver range).
 */
public final class AvrUart {
  private static final int UBRR_MOST = 4095;

  // DS40002061A Tables 20-2 and 20-3, "Recommended Max Receiver Error" for 5 to 10 data and parity
  // bits; rows 5 and 9 from memory.
  private static final List<Double> RECOMMENDED_NORMAL = List.of(3.0, 2.5, 2.0, 2.0, 1.5, 1.5);
  private static final List<Double> RECOMMENDED_DOUBLE = List.of(2.5, 2.0, 1.5, 1.5, 1.5, 1.0);

  private AvrUart() {}

  /**
   * The UBRR value nearest to a rate. Rates beyond the register are answered with its end, so the
   * error shows how far off they are.
   *
   * @param clockHz clock of the processor in Hz
   * @param baud wanted rate in bit/s
   * @param doubleSpeed true with U2X set
   * @return UBRR as divisor, the rate it gives and its error
   * @throws OutOfDomain if clock or rate is not above zero
   */
  public static BaudSetting setting(long clockHz, long baud, boolean doubleSpeed) {
    BaudSetting.check(clockHz, baud);
    long ubrr = Rounded.tieUp(clockHz, samples(doubleSpeed) * baud) - 1;
    long kept = Rounded.within(ubrr, 0, UBRR_MOST);
    return BaudSetting.of(kept, baud(clockHz, (int) kept, doubleSpeed), baud);
  }

  /** The rate in bit/s of a UBRR value of 0 to 4095. */
  public static double baud(long clockHz, int ubrr, boolean doubleSpeed) {
    OutOfDomain.positive("the clock in Hz", clockHz);
    OutOfDomain.between("UBRR", ubrr, 0, UBRR_MOST);
    return (double) clockHz / (samples(doubleSpeed) * (ubrr + 1));
  }

  /**
   * The slowest and the fastest sender that the receiver still follows.
   *
   * @param bits data and parity bits of a frame, 5 to 10
   * @param doubleSpeed true with U2X set
   */
  public static ReceiverWindow window(int bits, boolean doubleSpeed) {
    OutOfDomain.between("data and parity bits", bits, 5, 10);
    double samples = doubleSpeed ? 8 : 16;
    double first = doubleSpeed ? 4 : 8;
    double middle = doubleSpeed ? 5 : 9;
    double slow = (bits + 1) * samples / (samples - 1 + bits * samples + first);
    double fast = (bits + 2) * samples / ((bits + 1) * samples + middle);
    return new ReceiverWindow(slow, fast);
  }

  /** The error in percent that the data sheet recommends as most, for 5 to 10 bits. */
  public static double recommendedErrorPercent(int bits, boolean doubleSpeed) {
    OutOfDomain.between("data and parity bits", bits, 5, 10);
    return (doubleSpeed ? RECOMMENDED_DOUBLE : RECOMMENDED_NORMAL).get(bits - 5);
  }

  private static long samples(boolean doubleSpeed) {
    return doubleSpeed ? 8 : 16;
  }
}
