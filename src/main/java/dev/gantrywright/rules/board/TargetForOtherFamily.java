package dev.gantrywright.rules.board;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;
import java.util.Optional;

/** The build target makes an image for another family of microcontrollers. */
@Rule(
    id = "GW-B006",
    slug = "target-for-other-family",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SAFE,
    summary = "The build target makes an image for another family of microcontrollers",
    reads = {"board.target", "board.mcu"},
    source = "the part that the build settings name for the target")
public final class TargetForOtherFamily implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String target = context.profile().board().target();
    Optional<Mcu> fitted = context.mcu();
    Optional<String> builtFor = context.targetPart(target);
    Optional<Mcu> other = builtFor.flatMap(context::mcu);
    if (fitted.isEmpty() || other.isEmpty() || fitted.get().family().equals(other.get().family())) {
      return;
    }
    List<String> fitting = context.targetsFor(fitted.get().part());
    sink.report(
        "board.target",
        "found "
            + target
            + ", which builds for "
            + builtFor.get()
            + " ("
            + other.get().core()
            + "); the board carries "
            + fitted.get().part()
            + " ("
            + fitted.get().core()
            + ")",
        fitting.size() == 1
            ? Remedy.safe("Build " + fitting.get(0), "board.target", fitting.get(0))
            : Remedy.show("choose a target that builds for " + fitted.get().part()));
  }
}
