package dev.gantrywright.prove;

import java.util.Optional;

/**
 * One endstop's outcome.
 *
 * @param end axis end
 * @param verdict how it came out
 * @param other the endstop that it is mixed up with; empty where there is none
 * @param longestBounceNanos as far as the polling could see it
 * @param advice what to do with the hand or in the description
 * @param remedy the change of the profile that would settle it
 */
public record TouchResult(
    String end,
    TouchVerdict verdict,
    String other,
    long longestBounceNanos,
    String advice,
    Optional<Remedy> remedy) {
  /**
   * A change of one profile value.
   *
   * @param path field path
   * @param value the new value as text
   */
  public record Remedy(String path, String value) {}
}
