package dev.gantrywright.rules.board;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** The board constant belongs to a board with another microcontroller. */
@Rule(
    id = "GW-B005",
    slug = "constant-for-other-part",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.REVIEW,
    summary = "The board constant belongs to a board with another microcontroller",
    reads = {"board.constant", "board.mcu"},
    source = "the part that the firmware folder names beside the constant")
public final class ConstantForOtherPart implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String constant = context.profile().board().constant();
    String part = context.partName().orElse(null);
    if (!known(constant, part)) {
      return;
    }
    for (BoardConstant board : context.boards()) {
      if (board.constant().equals(constant)
          && board.mcu() != null
          && !context.samePart(board.mcu(), part)) {
        List<String> fitting =
            context.boards().stream()
                .filter(other -> other.mcu() != null && context.samePart(other.mcu(), part))
                .map(BoardConstant::constant)
                .toList();
        sink.report(
            "board.constant",
            "found "
                + constant
                + ", which stands for a board with "
                + board.mcu()
                + "; this board carries "
                + part,
            fitting.size() == 1
                ? Remedy.review("Take " + fitting.get(0), "board.constant", fitting.get(0))
                : Remedy.show("choose the constant of a board with " + part));
      }
    }
  }
}
