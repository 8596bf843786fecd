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
import java.util.List;
import java.util.Optional;

/** The build target is for a sister of the fitted microcontroller. */
@Rule(
    id = "GW-B007",
    slug = "target-for-sister-part",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.REVIEW,
    summary = "The build target is for a sister of the fitted microcontroller",
    reads = {"board.target", "board.mcu"},
    source =
        "the part that the build settings name for the target; sizes from the parts' data sheets")
public final class TargetForSisterPart implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String target = context.profile().board().target();
    Optional<Mcu> fitted = context.mcu();
    Optional<Mcu> other = context.targetPart(target).flatMap(context::mcu);
    if (fitted.isEmpty() || other.isEmpty()) {
      return;
    }
    Mcu here = fitted.get();
    Mcu there = other.get();
    if (!here.family().equals(there.family()) || here.part().equals(there.part())) {
      return;
    }
    List<String> fitting = context.targetsFor(here.part());
    sink.sourced(
        "board.target",
        "found "
            + target
            + " for "
            + there.part()
            + " (flash "
            + n(there.flashBytes() / 1024)
            + " KiB, RAM "
            + n(there.ramBytes() / 1024)
            + " KiB); the board carries "
            + here.part()
            + " (flash "
            + n(here.flashBytes() / 1024)
            + " KiB, RAM "
            + n(here.ramBytes() / 1024)
            + " KiB)",
        here.partSource(),
        fitting.size() == 1
            ? Remedy.review("Build " + fitting.get(0), "board.target", fitting.get(0))
            : Remedy.show("compare memory sizes, clock and pins of both parts before loading"));
  }
}
