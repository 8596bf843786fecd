package dev.gantrywright.rules.board;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;

/** The board's clock is above what the microcontroller bears. */
@Rule(
    id = "GW-B011",
    slug = "clock-above-part",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The board's clock is above what the microcontroller bears",
    reads = {"board.mcu", "board.sheet"},
    source = "the part's data sheet, highest clock")
public final class ClockAbovePart implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double clock = context.sheet().map(BoardSheet::clockHz).orElse(null);
    if (clock != null && context.mcu().isPresent() && clock > context.mcu().get().clockHz()) {
      Mcu mcu = context.mcu().get();
      sink.sourced(
          "board.sheet",
          "found "
              + Shown.hertz(clock)
              + ", the "
              + mcu.part()
              + " goes to "
              + Shown.hertz(mcu.clockHz()),
          mcu.partSource(),
          Remedy.show("correct the clock in the board sheet"));
    }
  }
}
