package dev.gantrywright.rules;

import java.util.List;

/** Takes what one rule finds. */
public interface Sink {
  /**
   * Reports one finding.
   *
   * @param path the field, or {@code file:line} in the firmware folder
   * @param evidence what was found and what it should be, numbers with units
   * @param source the published fact that this finding rests on
   */
  void report(String path, String evidence, String source, List<Remedy> remedies);

  /** Reports one finding that rests on the rule's own source. */
  default void report(String path, String evidence, Remedy... remedies) {
    report(path, evidence, null, List.of(remedies));
  }

  /** Reports one finding with a source of its own. */
  default void sourced(String path, String evidence, String source, Remedy... remedies) {
    report(path, evidence, source, List.of(remedies));
  }
}
