package dev.gantrywright.cli;

import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageBytes;
import dev.gantrywright.image.ImageReader;
import java.io.IOException;
import java.nio.file.Path;

/** Reads an image for a verb; every problem becomes one line. */
final class ImageFile {
  private ImageFile() {}

  static byte[] bytes(Path file) {
    try {
      return ImageBytes.of(file);
    } catch (IOException unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    }
  }

  static Image read(Path file) {
    return read(file, bytes(file));
  }

  /**
   * @param bytes what stood in the file
   */
  static Image read(Path file, byte[] bytes) {
    try {
      return ImageReader.read(bytes);
    } catch (BrokenImage e) {
      throw new UsageProblem(file + ": " + e.getMessage(), e);
    }
  }
}
