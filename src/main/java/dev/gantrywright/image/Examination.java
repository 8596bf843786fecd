package dev.gantrywright.image;

import java.util.OptionalLong;

/**
 * One image beside everything it is held against.
 *
 * @param image put at its place where the file does not say it
 * @param chip the controller
 * @param loader its bootloader
 * @param around builds, boards and loads
 */
public record Examination(Image image, Chip chip, Loader loader, Circumstances around) {
  /** Puts the image at the loader's offset and, in a UF2 file, takes the chip's own family. */
  public static Examination of(Image image, Chip chip, Loader loader, Circumstances around) {
    Image placed = image.at(chip.flash().start() + loader.startBytes());
    if (image.details() instanceof ImageDetails.Uf2 uf2) {
      for (long family : chip.uf2Families()) {
        Contents own = uf2.families().get(family);
        if (own != null && !own.isEmpty()) {
          placed = placed.with(own);
          break;
        }
      }
    }
    return new Examination(placed, chip, loader, around);
  }

  /** Where the bootloader starts the program. */
  public long programStart() {
    return chip.flash().start() + loader.startBytes();
  }

  /** The flash that is left for the program. */
  public Range programFlash() {
    long end = chip.flash().end() - loader.endBytes();
    return new Range(programStart(), Math.max(programStart(), end));
  }

  /** What of the image lies in the chip's flash. */
  public Contents inFlash() {
    return image.contents().within(chip.flash());
  }

  /** Where the vector table stands. */
  long vectorStart() {
    return programStart() + (loader.startBytes() == 0 ? chip.preambleBytes() : 0);
  }

  /** A word of the vector table. */
  OptionalLong vector(int index) {
    return image.contents().word(vectorStart() + 4L * index);
  }

  boolean inRam(long address) {
    return chip.ram().stream().anyMatch(b -> b.range().contains(address));
  }

  /** Whether banks of RAM hold all of a range, running on from one to the next where they touch. */
  boolean ramHolds(Range range) {
    long at = range.start();
    while (at < range.end()) {
      long here = at;
      OptionalLong next =
          chip.ram().stream()
              .filter(b -> b.range().contains(here))
              .mapToLong(b -> b.range().end())
              .max();
      if (next.isEmpty()) {
        return false;
      }
      at = next.getAsLong();
    }
    return true;
  }

  boolean inImage(long address) {
    return image.contents().byteAt(address).isPresent();
  }
}
