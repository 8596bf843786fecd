package dev.gantrywright.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where the program keeps what it must keep for this user. */
public final class Places {
  private final Map<String, String> environment;
  private final Path home;
  private final String system;

  /**
   * @param environment the process environment
   * @param home the user's home folder
   * @param system the system's name, as {@code os.name} gives it
   */
  public Places(Map<String, String> environment, Path home, String system) {
    this.environment = Map.copyOf(environment);
    this.home = home;
    this.system = system.toLowerCase(Locale.ROOT);
  }

  /** The places of the user who runs the program. */
  public static Places ofThisUser() {
    return new Places(
        System.getenv(), Path.of(System.getProperty("user.home")), System.getProperty("os.name"));
  }

  /**
   * The folder for data: by the XDG Base Directory Specification on Linux, by the system's custom
   * elsewhere.
   */
  public Path data() {
    String given = environment.get("XDG_DATA_HOME");
    if (given != null && Path.of(given).isAbsolute()) {
      return Path.of(given, "gantrywright");
    }
    if (system.contains("windows") && environment.containsKey("APPDATA")) {
      return Path.of(environment.get("APPDATA"), "Gantrywright");
    }
    return system.contains("mac")
        ? home.resolve("Library/Application Support/Gantrywright")
        : home.resolve(".local/share/gantrywright");
  }

  /** The unpacked demo workshop. */
  public Path workshop() {
    return data().resolve("harbour-street-workshop");
  }
}
