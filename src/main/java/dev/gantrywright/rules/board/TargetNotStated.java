package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** No build target is stated, and the folder has several. */
@Rule(
    id = "GW-B021",
    slug = "target-not-stated",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.REVIEW,
    summary = "No build target is stated, and the folder has several",
    reads = {"board.target", "board.mcu"},
    source = "the firmware folder's own build settings")
public final class TargetNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    List<String> all = context.targetNames();
    if (context.profile().board().target() != null || all.size() < 2) {
      return;
    }
    List<String> fitting =
        context.mcu().map(mcu -> context.targetsFor(mcu.part())).orElse(List.of());
    sink.report(
        "board.target",
        "none stated; the folder can build " + String.join(", ", all),
        fitting.size() == 1
            ? Remedy.review("Build " + fitting.get(0), "board.target", fitting.get(0))
            : Remedy.show("choose one of the folder's targets"));
  }
}
