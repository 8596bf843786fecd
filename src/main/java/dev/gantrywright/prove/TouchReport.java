package dev.gantrywright.prove;

import java.util.List;
import java.util.Map;

/**
 * The outcome of a touch test.
 *
 * @param results one for each fitted endstop
 * @param matrix pressed endstop to what every endstop did meanwhile
 * @param rest what each read at rest
 */
public record TouchReport(
    List<TouchResult> results,
    Map<String, Map<String, PressEffect>> matrix,
    Map<String, Boolean> rest) {
  public TouchReport {
    results = List.copyOf(results);
    matrix = Map.copyOf(matrix);
    rest = Map.copyOf(rest);
  }

  public boolean passed() {
    return !results.isEmpty() && results.stream().allMatch(r -> r.verdict() == TouchVerdict.WORKS);
  }

  public TouchResult of(String end) {
    return results.stream().filter(r -> r.end().equals(end)).findFirst().orElseThrow();
  }
}
