package dev.gantrywright.link;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** Skips a test, visibly, where a tool is missing; fails instead where it is required. */
public final class RequiredTools {
  private RequiredTools() {}

  public static void assume(boolean there, String what) {
    if (Boolean.getBoolean("board.required")) {
      assertTrue(there, what + " required and not here");
    }
    assumeTrue(there, what + " not here");
  }

  /** The program's path, or the test is skipped. */
  public static Path program(String name) {
    for (String folder : "/usr/sbin:/usr/bin:/usr/local/sbin:/usr/local/bin".split(":")) {
      Path path = Path.of(folder, name);
      if (Files.isExecutable(path)) {
        return path;
      }
    }
    assume(false, name);
    throw new IllegalStateException("not reached");
  }
}
