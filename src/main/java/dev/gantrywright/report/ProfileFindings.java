package dev.gantrywright.report;

import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Waivers;
import java.util.List;

/**
 * What the rule book says of one profile.
 *
 * @param file as it was named on the command line or chosen in the window
 * @param printer the printer's name
 * @param problems parts of the printer that could not be read, one line each
 * @param sorted its findings, sorted by the profile's waivers
 */
public record ProfileFindings(String file, String printer, List<String> problems, Waivers sorted) {
  public ProfileFindings {
    problems = List.copyOf(problems);
  }

  /** How many open findings there are of a level. */
  public long count(Level level) {
    long count = 0;
    for (Finding finding : open()) {
      count += finding.level() == level ? 1 : 0;
    }
    return count;
  }

  /** The findings that nobody has waived, worst first. */
  public List<Finding> open() {
    return sorted.open();
  }
}
