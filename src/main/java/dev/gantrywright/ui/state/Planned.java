package dev.gantrywright.ui.state;

import dev.gantrywright.patch.PatchPlan;
import java.util.List;
import java.util.Optional;

/**
 * What would be written for one revision of a printer.
 *
 * @param revision of the profile
 * @param plan empty without folder or name map
 * @param rows the plan side by side, long unchanged stretches folded
 */
public record Planned(long revision, Optional<PatchPlan> plan, List<DiffRow> rows) {
  public Planned {
    rows = List.copyOf(rows);
  }

  static Planned nothing() {
    return new Planned(-1, Optional.empty(), List.of());
  }
}
