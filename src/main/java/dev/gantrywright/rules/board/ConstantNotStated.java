package dev.gantrywright.rules.board;

import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** No board constant is stated, and the folder knows several boards. */
@Rule(
    id = "GW-B022",
    slug = "constant-not-stated",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.REVIEW,
    summary = "No board constant is stated, and the folder knows several boards",
    reads = {"board.constant", "board.mcu"},
    source = "the firmware folder's own list of boards")
public final class ConstantNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    List<String> all = context.boardConstants();
    if (context.profile().board().constant() != null || all.size() < 2) {
      return;
    }
    List<String> fitting =
        context.partName().stream()
            .flatMap(
                part ->
                    context.boards().stream()
                        .filter(board -> board.mcu() != null && context.samePart(board.mcu(), part))
                        .map(BoardConstant::constant))
            .toList();
    sink.report(
        "board.constant",
        "none stated; the folder knows " + String.join(", ", all),
        fitting.size() == 1
            ? Remedy.review("Take " + fitting.get(0), "board.constant", fitting.get(0))
            : Remedy.show("choose one of the folder's boards"));
  }
}
