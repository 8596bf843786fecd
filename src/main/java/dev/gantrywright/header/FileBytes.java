package dev.gantrywright.header;

import java.io.FileInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads whole files with the fewest parts of the class library: start-up time counts. */
final class FileBytes {
  private FileBytes() {}

  /**
   * All bytes of a file.
   *
   * @throws IOException as {@link Files#readAllBytes} throws it, which says why more exactly
   */
  static byte[] read(Path file) throws IOException {
    try (InputStream in = new FileInputStream(file.toString())) {
      return in.readAllBytes();
    } catch (FileNotFoundException e) {
      return Files.readAllBytes(file);
    }
  }
}
