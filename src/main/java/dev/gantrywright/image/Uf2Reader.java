package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Reads UF2 files, several families in one file included.
 *
 * <p>Source: USB Flashing Format (UF2) specification, github.com/microsoft/uf2.
 */
final class Uf2Reader {
  private static final String AGAIN = "Convert or copy the file again.";

  /** Far above what one file serves; each family keeps account of its own blocks. */
  private static final int MOST_FAMILIES = 256;

  /** What one family's blocks gave so far; each family counts its own blocks. */
  private static final class Family {
    final ContentsBuilder memory = new ContentsBuilder();
    final BitSet seen = new BitSet();
    long count = -1;
  }

  private final Map<Long, Family> families = new TreeMap<>();
  private Optional<String> device = Optional.empty();
  private Optional<String> version = Optional.empty();
  private int skipped;

  static Image read(byte[] file) throws BrokenImage {
    return new Uf2Reader().readAll(file);
  }

  private Image readAll(byte[] file) throws BrokenImage {
    if (file.length % Uf2Block.BYTES != 0) {
      throw new BrokenImage(
          Reason.TRUNCATED,
          "UF2 file",
          "of " + file.length + " bytes is not a whole number of 512-byte blocks",
          AGAIN);
    }
    int blocks = file.length / Uf2Block.BYTES;
    for (int i = 0; i < blocks; i++) {
      take(Uf2Block.read(file, i), i, blocks);
    }
    Map<Long, Contents> byFamily = new HashMap<>();
    for (Map.Entry<Long, Family> e : families.entrySet()) {
      complete(e.getValue());
      byFamily.put(e.getKey(), e.getValue().memory.build());
    }
    Contents main =
        byFamily.values().stream()
            .filter(c -> !c.isEmpty())
            .findFirst()
            .orElseThrow(
                () ->
                    new BrokenImage(
                        Reason.NOTHING_TO_LOAD,
                        "UF2 file",
                        "has no block for the main flash",
                        "Give the file that holds the program."));
    return Image.of(
        ImageFormat.UF2,
        main,
        OptionalLong.empty(),
        new ImageDetails.Uf2(blocks, byFamily, skipped, device, version),
        file);
  }

  private void take(Uf2Block block, int index, int blocks) throws BrokenImage {
    String where = "UF2 block " + index;
    if (families.size() >= MOST_FAMILIES && !families.containsKey(block.family())) {
      throw new BrokenImage(
          Reason.BAD_COUNT, where, "starts a family beyond the " + MOST_FAMILIES + "th", AGAIN);
    }
    Family family = families.computeIfAbsent(block.family(), k -> new Family());
    if (family.count < 0) {
      family.count = block.count();
    }
    if (block.count() != family.count || block.count() > blocks) {
      throw new BrokenImage(
          Reason.BAD_COUNT,
          where,
          "says " + block.count() + " blocks where " + Math.min(family.count, blocks) + " fit",
          AGAIN);
    }
    if (block.number() >= block.count() || family.seen.get((int) block.number())) {
      throw new BrokenImage(
          Reason.BLOCK_SEQUENCE,
          where,
          "has number " + block.number() + " of " + block.count() + ", which is taken or too high",
          AGAIN);
    }
    family.seen.set((int) block.number());
    if (device.isEmpty()) {
      device = Uf2Tags.text(block, Uf2Tags.DEVICE);
    }
    if (version.isEmpty()) {
      version = Uf2Tags.text(block, Uf2Tags.VERSION);
    }
    if (block.has(Uf2Block.FILE_CONTAINER) || block.has(Uf2Block.NOT_MAIN_FLASH)) {
      skipped++;
      return;
    }
    family.memory.put(block.address(), block.payload(), where);
  }

  private static void complete(Family family) throws BrokenImage {
    int missing = family.seen.nextClearBit(0);
    if (missing < family.count) {
      throw new BrokenImage(
          Reason.BLOCK_SEQUENCE,
          "UF2 file",
          "lacks block " + missing + " of " + family.count,
          AGAIN);
    }
  }
}
