package dev.gantrywright.header;

import java.io.FileInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads whole files with the fewest parts of the class library: start-up time counts. */
final class FileBytes {
  private static final int LARGEST = 64 << 20;

  private FileBytes() {}

  /**
   * All bytes of a file.
   *
   * @throws IOException as {@link Files#readAllBytes} throws it, which says why more exactly
   */
  static byte[] read(Path file) throws IOException {
    try (InputStream in = new FileInputStream(file.toString())) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw new IOException("is larger than 64 MiB, so it is no header");
      }
      return bytes;
    } catch (FileNotFoundException e) {
      return Files.readAllBytes(file);
    }
  }
}
