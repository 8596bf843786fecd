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

/** The build target is spelled almost like one of the folder's. */
@Rule(
    id = "GW-B009",
    slug = "target-misspelt",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SAFE,
    summary = "The build target is spelled almost like one of the folder's",
    reads = {"board.target"},
    source = "the firmware folder's own build settings")
public final class TargetMisspelt implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String target = context.profile().board().target();
    List<String> all = context.targetNames();
    if (target == null || all.contains(target)) {
      return;
    }
    NearMiss.of(target, all)
        .ifPresent(
            meant ->
                sink.report(
                    "board.target",
                    "found " + target + ", the folder has " + meant,
                    Remedy.safe("Spell it " + meant, "board.target", meant)));
  }
}
