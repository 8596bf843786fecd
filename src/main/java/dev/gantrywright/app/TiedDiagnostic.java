package dev.gantrywright.app;

import dev.gantrywright.build.Diagnostic;
import java.util.List;

/**
 * A diagnostic beside what it is about.
 *
 * @param diagnostic what the tool said
 * @param ties settings on its line, on the lines that its notes point to, or that it names
 */
public record TiedDiagnostic(Diagnostic diagnostic, List<Tie> ties) {
  public TiedDiagnostic {
    ties = List.copyOf(ties);
  }

  /**
   * One setting.
   *
   * @param macro its name in the firmware
   * @param file where it stands, relative to the firmware folder
   * @param line from 1
   * @param value as it stands there
   * @param paths profile fields that it carries; empty where the name map knows none
   */
  public record Tie(String macro, String file, int line, String value, List<String> paths) {
    public Tie {
      paths = List.copyOf(paths);
    }
  }
}
