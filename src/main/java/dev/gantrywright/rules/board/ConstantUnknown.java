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

/** The firmware folder has no board constant of this name. */
@Rule(
    id = "GW-B002",
    slug = "constant-unknown",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The firmware folder has no board constant of this name",
    reads = {"board.constant"},
    source = "the firmware folder's own list of boards")
public final class ConstantUnknown implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String constant = context.profile().board().constant();
    List<String> all = context.boardConstants();
    if (constant != null
        && !all.isEmpty()
        && !all.contains(constant)
        && NearMiss.of(constant, all).isEmpty()) {
      sink.report(
          "board.constant",
          "found "
              + constant
              + ", which is none of the folder's "
              + all.size()
              + " boards: "
              + String.join(", ", all),
          Remedy.show("choose one of the folder's boards, or add this board to the firmware"));
    }
  }
}
