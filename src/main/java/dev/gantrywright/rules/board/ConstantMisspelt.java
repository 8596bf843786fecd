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

/** The board constant is spelled almost like one of the folder's. */
@Rule(
    id = "GW-B003",
    slug = "constant-misspelt",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SAFE,
    summary = "The board constant is spelled almost like one of the folder's",
    reads = {"board.constant"},
    source = "the firmware folder's own list of boards")
public final class ConstantMisspelt implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String constant = context.profile().board().constant();
    List<String> all = context.boardConstants();
    if (constant == null || all.contains(constant)) {
      return;
    }
    NearMiss.of(constant, all)
        .ifPresent(
            meant ->
                sink.report(
                    "board.constant",
                    "found " + constant + ", the folder has " + meant,
                    Remedy.safe("Spell it " + meant, "board.constant", meant)));
  }
}
