package dev.gantrywright.link;

/**
 * How bytes are framed on a serial line.
 *
 * @param baud symbols a second, in bit/s
 * @param dataBits 5 to 8
 * @param parity the check bit
 * @param stopBits 1 or 2
 */
public record SerialSettings(int baud, int dataBits, Parity parity, int stopBits) {
  /** The check bit of a frame. */
  public enum Parity {
    NONE,
    ODD,
    EVEN
  }

  public SerialSettings {
    if (baud < 50 || baud > 20_000_000) {
      throw new IllegalArgumentException("baud " + baud + " is outside 50 to 20,000,000 bit/s");
    }
    if (dataBits < 5 || dataBits > 8) {
      throw new IllegalArgumentException("data bits " + dataBits + " is outside 5 to 8");
    }
    if (stopBits < 1 || stopBits > 2) {
      throw new IllegalArgumentException("stop bits " + stopBits + " is neither 1 nor 2");
    }
  }

  /** Eight data bits, no parity, one stop bit. */
  public static SerialSettings at(int baud) {
    return new SerialSettings(baud, 8, Parity.NONE, 1);
  }

  public SerialSettings withBaud(int other) {
    return new SerialSettings(other, dataBits, parity, stopBits);
  }

  /** Bits on the wire for one byte: start, data, parity and stop bits. */
  public int bitsPerByte() {
    return 1 + dataBits + (parity == Parity.NONE ? 0 : 1) + stopBits;
  }

  /** Seconds that so many bytes occupy the wire, one way. */
  public double seconds(int bytes) {
    return (double) bytes * bitsPerByte() / baud;
  }
}
