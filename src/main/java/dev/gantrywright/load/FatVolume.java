package dev.gantrywright.load;

/**
 * What is fixed about FAT volumes.
 *
 * <p>Source: Microsoft FAT specification (fatgen103): the count of clusters alone decides the type;
 * a file's size is a 32-bit number.
 */
public final class FatVolume {
  /** The largest file, bytes. */
  public static final long LARGEST_FILE = 0xFFFFFFFFL;

  static final long FAT12_BELOW = 4085;
  static final long FAT16_BELOW = 65525;

  private FatVolume() {}

  /** 12, 16 or 32, for a count of clusters. */
  public static int bits(long clusters) {
    if (clusters < FAT12_BELOW) {
      return 12;
    }
    return clusters < FAT16_BELOW ? 16 : 32;
  }

  /** Bytes that the clusters hold. */
  public static long bytes(long clusters, long clusterBytes) {
    return clusters * clusterBytes;
  }
}
