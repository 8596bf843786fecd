package dev.gantrywright.cli;

import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads an image for a verb; every problem becomes one line. */
final class ImageFile {
  private ImageFile() {}

  /** The bytes of a file that is no larger than any image. */
  static byte[] bytes(Path file) {
    if (Files.isDirectory(file)) {
      throw new UsageProblem(file + ": is a folder; give the image file in it");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new UsageProblem(file + ": is a pipe or a device; give the image file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(ImageReader.LARGEST_FILE + 1);
    } catch (NoSuchFileException e) {
      throw new UsageProblem(file + ": no such file", e);
    } catch (IOException e) {
      throw new UsageProblem(file + ": cannot be read: " + e.getMessage(), e);
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
