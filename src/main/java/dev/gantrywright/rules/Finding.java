package dev.gantrywright.rules;

import java.util.Comparator;
import java.util.List;

/**
 * One thing that does not fit.
 *
 * @param path the profile field, or {@code file:line} in the firmware folder
 * @param where the same in words
 * @param summary the rule's one line
 * @param evidence what was found and what it should be, numbers with units
 * @param source the published fact behind it
 * @param remedies best first
 * @param link the rule's page, relative to the documentation
 */
public record Finding(
    String id,
    String slug,
    Level level,
    Family family,
    String path,
    String where,
    String summary,
    String evidence,
    String source,
    List<Remedy> remedies,
    String link) {

  /** Worst first, then by family, rule and place. */
  public static final Comparator<Finding> WORST_FIRST = Finding::compare;

  public Finding {
    remedies = List.copyOf(remedies);
  }

  private static int compare(Finding one, Finding other) {
    if (one.level != other.level) {
      return one.level.compareTo(other.level);
    }
    if (one.family != other.family) {
      return one.family.compareTo(other.family);
    }
    int byRule = one.id.compareTo(other.id);
    return byRule == 0 ? one.path.compareTo(other.path) : byRule;
  }

  /** Names this finding in {@code waivers}: rule and place. */
  public String key() {
    return id + "@" + path;
  }
}
