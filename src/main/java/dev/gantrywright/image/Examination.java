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
    if (image.details() instanceof ImageDetails.Uf2 uf2 && chip.uf2Family().isPresent()) {
      Contents own = uf2.families().get(chip.uf2Family().getAsLong());
      if (own != null) {
        placed = placed.with(own);
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

  boolean inImage(long address) {
    return image.contents().byteAt(address).isPresent();
  }
}
