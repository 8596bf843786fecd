package dev.gantrywright.physics;

/**
 * What a baud generator makes of a wanted rate.
 *
 * @param divisor the divisor as the maker's tables print it
 * @param actualBaud rate that comes out, in bit/s
 * @param errorPercent (actual - wanted) / wanted x 100, signed
 */
public record BaudSetting(double divisor, double actualBaud, double errorPercent) {

  static BaudSetting of(double divisor, double actualBaud, long wantedBaud) {
    return new BaudSetting(divisor, actualBaud, errorPercent(actualBaud, wantedBaud));
  }

  static double errorPercent(double actualBaud, long wantedBaud) {
    return (actualBaud - wantedBaud) * 100.0 / wantedBaud;
  }

  static void check(long clockHz, long baud) {
    OutOfDomain.positive("the clock in Hz", clockHz);
    OutOfDomain.positive("the baud rate", baud);
    if (clockHz > 100_000_000_000L || baud > 100_000_000_000L) {
      throw new OutOfDomain("clock and baud rate must stay below 100 GHz");
    }
  }
}
