package dev.gantrywright.app;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that are kept beside a printer's profile under its name, each in a file of its own. */
final class BesideProfile {
  private BesideProfile() {}

  /**
   * Makes an empty file {@code NAME.WHAT.ENDING}, or {@code NAME.WHAT-2.ENDING} and so on where
   * there is one.
   */
  static Path create(Path profile, String what, String ending) throws IOException {
    String name = profile.getFileName().toString().replaceFirst("\\.printer\\.json$", "");
    for (int n = 1; ; n++) {
      Path file =
          profile.resolveSibling(name + "." + what + (n == 1 ? "" : "-" + n) + "." + ending);
      try {
        return Files.createFile(file);
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
    }
  }
}
