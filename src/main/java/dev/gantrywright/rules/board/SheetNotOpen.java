package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The board sheet is not open, so the board's own limits are unchecked. */
@Rule(
    id = "GW-B024",
    slug = "sheet-not-open",
    level = Level.NOTE,
    family = Family.BOARD,
    summary = "The board sheet is not open, so the board's own limits are unchecked",
    reads = {"board.sheet"},
    source = "the profile")
public final class SheetNotOpen implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.sheet().isEmpty()) {
      String sheet = context.profile().board().sheet();
      sink.report(
          "board.sheet",
          (sheet == null ? "no sheet is named" : sheet + " was not opened")
              + ": ports, inputs, sockets and ratings of the board stay unchecked");
    }
  }
}
