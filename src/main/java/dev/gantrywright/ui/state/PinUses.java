package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which pins of the microcontroller have which jobs on this machine. */
final class PinUses {
  private final Map<String, List<String>> jobs = new LinkedHashMap<>();

  /** One more job; the same job given twice, as drivers share a line, counts once. */
  void add(String pin, String job) {
    if (pin != null && !pin.isEmpty()) {
      List<String> known = jobs.computeIfAbsent(pin, each -> new ArrayList<>());
      if (!known.contains(job)) {
        known.add(job);
      }
    }
  }

  boolean twice(String pin) {
    return jobs.getOrDefault(pin, List.of()).size() > 1;
  }

  /** A line for each pin with more than one job. */
  List<String> troubles() {
    return jobs.entrySet().stream()
        .filter(each -> each.getValue().size() > 1)
        .map(each -> Texts.of("board.twice", each.getKey(), String.join(", ", each.getValue())))
        .toList();
  }
}
