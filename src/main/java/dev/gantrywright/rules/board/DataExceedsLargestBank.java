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

/** The image claims more RAM than the largest bank holds. */
@Rule(
    id = "GW-B014",
    slug = "data-exceeds-largest-bank",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The image claims more RAM than the largest bank holds",
    reads = {"build.image.ramBytes", "board.mcu"},
    source = "the part's data sheet, RAM banks")
public final class DataExceedsLargestBank implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Long bytes = context.profile().build().image().ramBytes();
    if (bytes == null || context.mcu().isEmpty()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    long largest = mcu.largestRam().bytes();
    if (bytes > largest && bytes <= mcu.ramBytes()) {
      sink.sourced(
          "build.image.ramBytes",
          "found "
              + n(bytes)
              + " bytes; the "
              + mcu.part()
              + " has "
              + n(mcu.ramBytes())
              + ", but its largest bank is "
              + n(largest),
          mcu.partSource(),
          Remedy.show("see that the linker script places data in more than one bank"));
    }
  }
}
