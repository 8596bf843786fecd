package dev.gantrywright.names;

import java.util.HashMap;
import java.util.Map;

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

  /** What is added for a field, by macro or key. */
  Map<String, Double> of(LearnableField field) {
    return byField.getOrDefault(field.path(), Map.of());
  }
}
