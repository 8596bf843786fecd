package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.PatchPlanner;
import java.util.List;
import java.util.Optional;

/**
 * Plans what would be written, off the view's thread, and lays it out in rows. Keeps what an edit
 * leaves as it was.
 */
final class PlanDesk {
  private volatile FadedLines fades;
  private volatile boolean whole;
  private PatchPlanner planner;
  private DiffSheet sheet;

  Planned plan(long revision, OpenPrinter printer) {
    if (printer.folder() == null || printer.names() == null) {
      return Planned.without(revision);
    }
    if (fades == null || !fades.of(printer.folder())) {
      fades = new FadedLines(printer.folder());
      sheet = new DiffSheet(fades);
    }
    if (planner == null || !planner.serves(printer.names(), printer.folder())) {
      planner = new PatchPlanner(printer.names(), printer.folder());
    }
    PatchPlan plan = planner.plan(printer.profile());
    return new Planned(
        revision, Optional.of(plan), sheet.folded(plan), whole ? sheet.whole(plan) : List.of());
  }

  /** Every setting of the folder; empty until the folder has been walked. */
  List<FoundSetting> settings() {
    FadedLines known = fades;
    return known == null ? List.of() : known.settings();
  }

  /** Whether whole files are wanted now that were not before. */
  boolean whole(boolean wanted) {
    boolean more = wanted && !whole;
    whole = wanted;
    return more;
  }
}
