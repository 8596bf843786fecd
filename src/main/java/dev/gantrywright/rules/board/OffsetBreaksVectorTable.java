package dev.gantrywright.rules.board;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;

/** The vector table cannot stand at the loader's offset. */
@Rule(
    id = "GW-B016",
    slug = "offset-breaks-vector-table",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The vector table cannot stand at the loader's offset",
    reads = {"board.mcu", "board.sheet"},
    source =
        "ARMv7-M Architecture Reference Manual B3.2.5: VTOR takes multiples of a power of two at least as large as the table, 128 bytes or more")
public final class OffsetBreaksVectorTable implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.mcu().isEmpty()
        || !context.mcu().get().arm()
        || context.mcu().get().interrupts().isEmpty()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    int entries = 16 + mcu.interrupts().getAsInt();
    long step = 4L * Math.max(32, Integer.highestOneBit(entries - 1) << 1);
    if (context.loaderOffset() % step != 0) {
      sink.report(
          "board.sheet",
          "found offset "
              + Shown.hex(context.loaderOffset())
              + "; the table of the "
              + mcu.part()
              + " has "
              + entries
              + " entries and stands at multiples of "
              + Shown.hex(step),
          Remedy.show("correct the loader's offset in the board sheet"));
    }
  }
}
