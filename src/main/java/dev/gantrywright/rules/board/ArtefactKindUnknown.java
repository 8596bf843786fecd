package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;
import java.util.Locale;

/** The image's file name has no known ending. */
@Rule(
    id = "GW-B025",
    slug = "artefact-kind-unknown",
    level = Level.NOTE,
    family = Family.BOARD,
    summary = "The image's file name has no known ending",
    reads = {"build.artefact"},
    source = "file name endings of images (common practice, no published source)")
public final class ArtefactKindUnknown implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String artefact = context.profile().build().artefact();
    if (artefact == null) {
      return;
    }
    String kind = artefact.substring(artefact.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (!List.of("bin", "hex", "elf", "uf2", "dfu", "img", "srec", "s19").contains(kind)) {
      sink.report(
          "build.artefact",
          "found " + artefact + "; known endings are bin, hex, elf, uf2, dfu, img, srec");
    }
  }
}
