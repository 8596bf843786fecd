package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.NearMiss;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** The firmware folder has no build target of this name. */
@Rule(
    id = "GW-B008",
    slug = "target-unknown",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The firmware folder has no build target of this name",
    reads = {"board.target"},
    source = "the firmware folder's own build settings")
public final class TargetUnknown implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String target = context.profile().board().target();
    List<String> all = context.targetNames();
    if (target != null
        && !all.isEmpty()
        && !all.contains(target)
        && NearMiss.of(target, all).isEmpty()) {
      sink.report(
          "board.target",
          "found "
              + target
              + ", which is none of the folder's "
              + all.size()
              + " targets: "
              + String.join(", ", all),
          Remedy.show("choose one of the folder's targets"));
    }
  }
}
