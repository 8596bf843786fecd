package dev.gantrywright.rules.board;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;

/** The image is linked for another address than the loader starts. */
@Rule(
    id = "GW-B015",
    slug = "image-start-differs-from-loader",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The image is linked for another address than the loader starts",
    reads = {"build.image.address", "board.mcu"},
    source = "the board sheet's loader offset; the part's data sheet, start of flash")
public final class ImageStartDiffersFromLoader implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Long address = context.profile().build().image().address();
    if (!known(address, context.sheet().map(s -> s.loader().offset()).orElse(null))
        || context.mcu().isEmpty()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    long wanted = mcu.flashBase() + context.loaderOffset();
    if (address != wanted) {
      sink.report(
          "build.image.address",
          "found "
              + Shown.hex(address)
              + ", the loader of the "
              + context.boardName()
              + " starts what stands at "
              + Shown.hex(wanted)
              + (address == mcu.flashBase() ? ": linked as if there were no loader" : ""),
          Remedy.show("build with the offset " + Shown.hex(context.loaderOffset())));
    }
  }
}
