package dev.gantrywright.cli;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import java.nio.file.Path;

/** Reads the profile that a verb was given. */
final class Profiles {
  private Profiles() {}

  static PrinterProfile read(Path file) {
    try {
      return ProfileStore.read(file);
    } catch (ProfileProblem e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }
}
