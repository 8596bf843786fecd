package dev.gantrywright;

import java.util.Locale;
import java.util.Map;

/** Whether a window can be shown. */
final class Display {
  private final Map<String, String> environment;
  private final String system;
  private final boolean headless;

  /**
   * @param environment the process environment
   * @param system the system's name, as {@code os.name} gives it
   * @param headless whether the user asked for no window by {@code java.awt.headless}
   */
  Display(Map<String, String> environment, String system, boolean headless) {
    this.environment = environment;
    this.system = system.toLowerCase(Locale.ROOT);
    this.headless = headless;
  }

  static Display ofThisProcess() {
    return new Display(
        System.getenv(), System.getProperty("os.name"), Boolean.getBoolean("java.awt.headless"));
  }

  /** Why there is no display, in a few words; empty where there is one. */
  String missing() {
    if (headless) {
      return "java.awt.headless is set";
    }
    boolean needsServer = !system.contains("windows") && !system.contains("mac");
    return needsServer && blank("DISPLAY") && blank("WAYLAND_DISPLAY")
        ? "no display here (DISPLAY and WAYLAND_DISPLAY are not set)"
        : "";
  }

  private boolean blank(String name) {
    return environment.getOrDefault(name, "").isBlank();
  }
}
