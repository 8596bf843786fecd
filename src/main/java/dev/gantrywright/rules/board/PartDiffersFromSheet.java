package dev.gantrywright.rules.board;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The profile names another microcontroller than the board sheet. */
@Rule(
    id = "GW-B001",
    slug = "part-differs-from-sheet",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.REVIEW,
    summary = "The profile names another microcontroller than the board sheet",
    reads = {"board.mcu", "board.sheet"},
    source = "the board sheet; the chip's own marking decides")
public final class PartDiffersFromSheet implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String stated = context.profile().board().mcu();
    String fitted = context.sheet().map(BoardSheet::mcu).orElse(null);
    if (known(stated, fitted) && !context.samePart(stated, fitted)) {
      sink.report(
          "board.mcu",
          "found " + stated + ", the sheet of the " + context.boardName() + " says " + fitted,
          Remedy.review("Take the sheet's part, " + fitted, "board.mcu", fitted));
    }
  }
}
