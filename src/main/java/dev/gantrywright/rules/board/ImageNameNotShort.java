package dev.gantrywright.rules.board;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Loader;
import dev.gantrywright.machine.LoaderMedium;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.regex.Pattern;

/** The loader looks for a file name that a plain FAT reader cannot see. */
@Rule(
    id = "GW-B018",
    slug = "image-name-not-short",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The loader looks for a file name that a plain FAT reader cannot see",
    reads = {"board.sheet"},
    source =
        "FAT32 File System Specification 1.03, short names: eight letters, three behind the point")
public final class ImageNameNotShort implements Check {
  private static final Pattern SHORT = Pattern.compile("[^.\\s]{1,8}(\\.[^.\\s]{1,3})?");

  @Override
  public void check(Context context, Sink sink) {
    Loader loader = context.sheet().map(BoardSheet::loader).orElse(null);
    if (loader == null || loader.medium() != LoaderMedium.CARD || loader.looksFor() == null) {
      return;
    }
    String name = loader.looksFor();
    if (!SHORT.matcher(name).matches()) {
      sink.report(
          "board.sheet",
          "found \"" + name + "\": a short name has at most 8 letters, a point and 3 more",
          Remedy.show("look up the loader's file name again and correct the board sheet"));
    }
  }
}
