package dev.gantrywright.rules.board;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The loader's offset lies behind the end of the flash. */
@Rule(
    id = "GW-B017",
    slug = "offset-beyond-flash",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The loader's offset lies behind the end of the flash",
    reads = {"board.mcu", "board.sheet"},
    source = "the part's data sheet, flash size")
public final class OffsetBeyondFlash implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.mcu().isPresent() && context.loaderOffset() >= context.mcu().get().flashBytes()) {
      Mcu mcu = context.mcu().get();
      sink.sourced(
          "board.sheet",
          "found offset "
              + n(context.loaderOffset())
              + ", the flash of the "
              + mcu.part()
              + " ends at "
              + n(mcu.flashBytes()),
          mcu.partSource(),
          Remedy.show("correct the loader's offset in the board sheet"));
    }
  }
}
