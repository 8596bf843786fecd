package dev.gantrywright.ui.quantity;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Paths as people write them: a path below the user's home folder begins with {@code ~}. */
public final class HomePath {
  private HomePath() {}

  private static Path home() {
    return Path.of(System.getProperty("user.home")).toAbsolutePath().normalize();
  }

  /** A path for the window. */
  public static String shown(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    Path home = home();
    if (!whole.startsWith(home) || whole.equals(home)) {
      return path.toString();
    }
    return "~" + path.getFileSystem().getSeparator() + home.relativize(whole);
  }

  /**
   * The path that somebody typed.
   *
   * @throws InvalidPathException where the text is none
   */
  public static Path read(String typed) {
    String text = typed.strip();
    if (text.equals("~")) {
      return home();
    }
    return text.startsWith("~/") || text.startsWith("~\\")
        ? home().resolve(text.substring(2))
        : Path.of(text);
  }
}
