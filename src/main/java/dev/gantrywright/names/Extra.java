package dev.gantrywright.names;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** What speaks for a place beside its words and value: a choice that the folder makes. */
final class Extra {
  private final Map<String, Map<String, Double>> byField = new HashMap<>();

  /**
   * Adds a word for a macro or key.
   *
   * @param field path with its star
   * @param gain added to the score
   */
  void add(String field, String macro, double gain) {
    byField.computeIfAbsent(field, key -> new HashMap<>()).put(macro, gain);
  }

  double of(LearnableField field, Candidate candidate) {
    return byField.getOrDefault(field.path(), Map.of()).getOrDefault(candidate.macro(), 0.0);
  }

  boolean helps(LearnableField field, Candidate candidate) {
    return byField.getOrDefault(field.path(), Map.of()).containsKey(candidate.macro());
  }

  /** The macros and keys that have something speaking for them. */
  Set<String> names(LearnableField field) {
    return byField.getOrDefault(field.path(), Map.of()).keySet();
  }
}
