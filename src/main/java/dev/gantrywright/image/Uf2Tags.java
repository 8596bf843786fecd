package dev.gantrywright.image;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The extension tags behind a block's payload.
 *
 * <p>Source: UF2 specification, "Extension tags".
 */
final class Uf2Tags {
  static final int VERSION = 0x9fc7bc;
  static final int DEVICE = 0x650d9d;

  private Uf2Tags() {}

  /** The text of a tag, where the block carries it whole. */
  static Optional<String> text(Uf2Block block, int wanted) {
    if (!block.has(Uf2Block.TAGS_PRESENT)) {
      return Optional.empty();
    }
    byte[] d = block.data();
    int at = (block.payloadBytes() + 3) & ~3;
    while (at + 4 <= d.length) {
      int size = d[at] & 0xFF;
      int type = (d[at + 1] & 0xFF) | (d[at + 2] & 0xFF) << 8 | (d[at + 3] & 0xFF) << 16;
      if (size < 4 || at + size > d.length || type == 0xFFFFFF) {
        return Optional.empty();
      }
      if (type == wanted) {
        return Optional.of(new String(d, at + 4, size - 4, StandardCharsets.UTF_8));
      }
      at += (size + 3) & ~3;
    }
    return Optional.empty();
  }
}
