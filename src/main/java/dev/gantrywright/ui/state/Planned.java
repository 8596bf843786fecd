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
 * @param whole the same with every line; empty while nobody looks at whole files
 */
public record Planned(
    long revision, Optional<PatchPlan> plan, List<DiffRow> rows, List<DiffRow> whole) {
  public Planned {
    rows = List.copyOf(rows);
    whole = List.copyOf(whole);
  }

  /** No folder or no name map: nothing can be planned. */
  static Planned without(long revision) {
    return new Planned(revision, Optional.empty(), List.of(), List.of());
  }

  static Planned nothing() {
    return without(-1);
  }
}
