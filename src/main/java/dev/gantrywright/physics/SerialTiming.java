package dev.gantrywright.physics;

/** How long bytes take on a serial line. Source: definition (8N1 is ten bit times a byte). */
public final class SerialTiming {
  private SerialTiming() {}

  /** Bit times of one byte: a start bit, data, parity (0 or 1) and stop bits. */
  public static int frameBits(int dataBits, int parityBits, int stopBits) {
    OutOfDomain.between("data bits", dataBits, 5, 9);
    OutOfDomain.between("parity bits", parityBits, 0, 1);
    OutOfDomain.between("stop bits", stopBits, 1, 2);
    return 1 + dataBits + parityBits + stopBits;
  }

  /** Seconds of one byte. */
  public static double byteSeconds(double baud, int frameBits) {
    return OutOfDomain.positive("frame bits", (long) frameBits)
        / OutOfDomain.positive("the baud rate", baud);
  }

  public static double bytesPerSecond(double baud, int frameBits) {
    return 1 / byteSeconds(baud, frameBits);
  }

  /** Seconds of a number of bytes without a gap. */
  public static double transferSeconds(long bytes, double baud, int frameBits) {
    return OutOfDomain.notNegative("the number of bytes", bytes) * byteSeconds(baud, frameBits);
  }
}
