package dev.gantrywright.image;

/**
 * The checksum of the RP2040's second boot stage.
 *
 * <p>Source: RP2040 boot ROM: polynomial 0x04C11DB7, start 0xFFFFFFFF, highest bit first, no final
 * exclusive-or.
 */
public final class Crc32Mpeg2 {
  private Crc32Mpeg2() {}

  /** The checksum, unsigned. */
  public static long of(byte[] bytes) {
    int crc = 0xFFFFFFFF;
    for (byte b : bytes) {
      crc ^= b << 24;
      for (int bit = 0; bit < 8; bit++) {
        crc = crc < 0 ? crc << 1 ^ 0x04C11DB7 : crc << 1;
      }
    }
    return crc & 0xFFFFFFFFL;
  }
}
