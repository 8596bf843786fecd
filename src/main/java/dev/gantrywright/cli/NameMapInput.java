package dev.gantrywright.cli;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapException;
import dev.gantrywright.names.NameMapJson;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds the name map that a verb works with. */
final class NameMapInput {
  private NameMapInput() {}

  /** The map given, else the one that the profile names, else what the folder itself teaches. */
  static NameMap read(Path given, Path profileFile, PrinterProfile profile, FirmwareFolder folder) {
    Path file = given;
    if (file == null && profile.build().names() != null) {
      Path beside = profileFile.toAbsolutePath().resolveSibling(profile.build().names());
      file = Files.exists(beside) ? beside : null;
    }
    if (file == null) {
      return NamesVerb.learner().learn(folder);
    }
    try {
      return NameMapJson.read(file);
    } catch (NameMapException unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    }
  }
}
