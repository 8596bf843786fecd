package dev.gantrywright.rules.board;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.machine.LoaderMedium;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;
import java.util.Locale;

/** The build leaves a kind of file that the loader does not take. */
@Rule(
    id = "GW-B019",
    slug = "artefact-kind-not-loadable",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The build leaves a kind of file that the loader does not take",
    reads = {"build.artefact", "board.sheet"},
    source = "the board sheet's loader; UF2 specification; USB device firmware upgrade class 1.1")
public final class ArtefactKindNotLoadable implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String artefact = context.profile().build().artefact();
    LoaderMedium medium = context.sheet().map(s -> s.loader().medium()).orElse(null);
    if (!known(artefact, medium)) {
      return;
    }
    String kind = artefact.substring(artefact.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    String takes =
        switch (medium) {
          case UF2 -> kind.equals("uf2") ? null : "UF2 blocks";
          case CARD ->
              List.of("hex", "elf", "uf2").contains(kind) ? "the plain bytes of the image" : null;
          case USB_DFU, SERIAL -> kind.equals("uf2") ? "the plain bytes of the image" : null;
        };
    if (takes != null) {
      sink.report(
          "build.artefact",
          "found " + artefact + "; a loader of kind " + medium.word() + " takes " + takes,
          Remedy.show("name the file of the right kind that the build leaves beside it"));
    }
  }
}
