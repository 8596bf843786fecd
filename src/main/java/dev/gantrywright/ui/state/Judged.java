package dev.gantrywright.ui.state;

import dev.gantrywright.patch.PatchPlan;
import java.util.List;
import java.util.Optional;

/**
 * What was worked out from one revision of a printer.
 *
 * @param revision of the profile
 * @param remarks what does not fit, worst first
 * @param plan what would be written; empty without folder or name map
 */
public record Judged(long revision, List<Remark> remarks, Optional<PatchPlan> plan) {
  public Judged {
    remarks = List.copyOf(remarks);
  }

  static Judged nothing() {
    return new Judged(-1, List.of(), Optional.empty());
  }
}
