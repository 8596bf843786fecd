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

/** The image claims more RAM than the part has. */
@Rule(
    id = "GW-B013",
    slug = "data-exceeds-ram",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The image claims more RAM than the part has",
    reads = {"build.image.ramBytes", "board.mcu"},
    source = "the part's data sheet, RAM banks")
public final class DataExceedsRam implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Long bytes = context.profile().build().image().ramBytes();
    if (bytes != null && context.mcu().isPresent() && bytes > context.mcu().get().ramBytes()) {
      Mcu mcu = context.mcu().get();
      sink.sourced(
          "build.image.ramBytes",
          "found "
              + n(bytes)
              + " bytes, the "
              + mcu.part()
              + " has "
              + n(mcu.ramBytes())
              + " in "
              + mcu.ram().size()
              + " bank"
              + (mcu.ram().size() == 1 ? "" : "s"),
          mcu.partSource(),
          Remedy.show("make buffers smaller or switch off features, and build again"));
    }
  }
}
