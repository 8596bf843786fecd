package dev.gantrywright.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where the program keeps its own records: histories, and images that were replaced. */
public final class RecordPlace {
  private RecordPlace() {}

  /**
   * The folder of this user.
   *
   * @param environment of the process; {@code GANTRYWRIGHT_RECORDS} overrides everything
   * @param osName as Java names the system
   * @param home the user's home folder
   */
  public static Path of(Map<String, String> environment, String osName, Path home) {
    String own = environment.get("GANTRYWRIGHT_RECORDS");
    if (own != null && !own.isBlank()) {
      return Path.of(own);
    }
    String os = osName.toLowerCase(Locale.ROOT);
    if (os.contains("windows")) {
      String data = environment.get("LOCALAPPDATA");
      Path base = data == null ? home.resolve("AppData").resolve("Local") : Path.of(data);
      return base.resolve("Gantrywright");
    }
    if (os.contains("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Gantrywright");
    }
    // XDG Base Directory Specification: state that should survive restarts.
    String state = environment.get("XDG_STATE_HOME");
    Path base =
        state == null || state.isBlank() ? home.resolve(".local").resolve("state") : Path.of(state);
    return base.resolve("gantrywright");
  }

  /** The folder of this user on this system. */
  public static Path ofSystem() {
    return of(
        System.getenv(),
        System.getProperty("os.name", ""),
        Path.of(System.getProperty("user.home", ".")));
  }

  /** A board's or printer's own folder in it. */
  public static Path of(Path records, String name) {
    String safe = name == null ? "" : name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    safe = safe.replaceAll("^-+|-+$", "");
    return records.resolve(safe.isEmpty() ? "unnamed" : safe);
  }
}
