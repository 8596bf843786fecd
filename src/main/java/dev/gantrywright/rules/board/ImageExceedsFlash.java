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

/** The image is larger than the flash behind the loader. */
@Rule(
    id = "GW-B012",
    slug = "image-exceeds-flash",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The image is larger than the flash behind the loader",
    reads = {"build.image.bytes", "board.mcu", "board.sheet"},
    source = "the part's data sheet, flash size")
public final class ImageExceedsFlash implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Long bytes = context.profile().build().image().bytes();
    if (bytes == null || context.mcu().isEmpty()) {
      return;
    }
    Mcu mcu = context.mcu().get();
    long room = mcu.flashBytes() - context.loaderBytes();
    if (bytes > room) {
      sink.sourced(
          "build.image.bytes",
          "found "
              + n(bytes)
              + " bytes, room for "
              + n(room)
              + ": "
              + n(mcu.flashBytes())
              + " of flash less "
              + n(context.loaderBytes())
              + " for the loader; "
              + n(bytes - room)
              + " too many",
          mcu.partSource(),
          Remedy.show("switch off features that this printer does not need and build again"));
    }
  }
}
