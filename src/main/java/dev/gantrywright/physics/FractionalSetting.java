package dev.gantrywright.physics;

/**
 * What the fractional baud generator of the LPC17 makes of a wanted rate.
 *
 * @param divisor DL = 256 x DLM + DLL
 * @param divAdd DIVADDVAL, 0 to 14
 * @param mul MULVAL, 1 to 15
 * @param actualBaud rate that comes out, in bit/s
 * @param errorPercent (actual - wanted) / wanted x 100, signed
 */
public record FractionalSetting(
    int divisor, int divAdd, int mul, double actualBaud, double errorPercent) {

  /** The same as a plain setting. */
  public BaudSetting plain() {
    return new BaudSetting(divisor, actualBaud, errorPercent);
  }
}
