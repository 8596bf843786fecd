package dev.gantrywright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of a patched folder that come from the firmware folder, not from a build in it. */
final class PatchedFiles {
  private PatchedFiles() {}

  /**
   * @param folder the patched folder
   * @return paths in the patched folder
   * @throws IOException where the firmware folder is not open or cannot be read
   */
  static List<Path> of(OpenPrinter printer, Path folder) throws IOException {
    if (printer.folder() == null) {
      throw new IOException("the firmware folder is not open, so its files are not known");
    }
    Path source = printer.folder().root().toAbsolutePath().normalize();
    try (Stream<Path> files = Files.walk(source)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> folder.resolve(source.relativize(f).toString()))
          .toList();
    }
  }
}
