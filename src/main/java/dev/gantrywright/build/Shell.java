package dev.gantrywright.build;

import java.util.List;
import java.util.Map;

/**
 * The user's shell.
 *
 * @param words program and switch that make it run one line
 * @param windows whether variables are written the way of the Windows command interpreter
 */
public record Shell(List<String> words, boolean windows) {
  public Shell {
    words = List.copyOf(words);
  }

  /** The shell of this system: {@code SHELL}, {@code /bin/sh}, or the Windows interpreter. */
  public static Shell ofSystem(String osName, Map<String, String> environment) {
    if (osName.toLowerCase(java.util.Locale.ROOT).contains("windows")) {
      return new Shell(
          List.of(environment.getOrDefault("ComSpec", "cmd.exe"), "/d", "/s", "/c"), true);
    }
    return new Shell(List.of(environment.getOrDefault("SHELL", "/bin/sh"), "-c"), false);
  }

  /** A quoted reference to a variable. */
  String reference(String variable) {
    return windows ? "\"%" + variable + "%\"" : "\"$" + variable + "\"";
  }
}
