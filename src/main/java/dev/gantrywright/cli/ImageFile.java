package dev.gantrywright.cli;

import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads an image for a verb; every problem becomes one line. */
final class ImageFile {
  private ImageFile() {}

  static Image read(Path file) {
    if (Files.isDirectory(file)) {
      throw new UsageProblem(file + ": is a folder; give the image file in it");
    }
    try {
      return ImageReader.read(file);
    } catch (BrokenImage e) {
      throw new UsageProblem(file + ": " + e.getMessage(), e);
    } catch (NoSuchFileException e) {
      throw new UsageProblem(file + ": no such file", e);
    } catch (IOException e) {
      throw new UsageProblem(file + ": cannot be read: " + e.getMessage(), e);
    }
  }
}
