package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The stated pull is not what the board fits. */
@Rule(
    id = "GW-E013",
    slug = "pull-differs-from-board",
    level = Level.WARNING,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.REVIEW,
    summary = "The stated pull is not what the board fits",
    reads = {"endstops.*.input", "endstops.*.pin", "endstops.*.fitted", "endstops.*.sensor"},
    source = "the board sheet's inputs")
public final class PullDiffersFromBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              InputPull fits = context.input(endstop).map(BoardInput::pull).orElse(null);
              if (!Levels.fitted(endstop)
                  || !known(fits, endstop.input())
                  || fits == endstop.input()
                  || endstop.input() == InputPull.DRIVEN) {
                return;
              }
              String path = "endstops." + name + ".input";
              sink.report(
                  path,
                  "found "
                      + endstop.input().word()
                      + "; the sheet says "
                      + fits.word()
                      + " at "
                      + endstop.pin(),
                  Remedy.review("Take the sheet's " + fits.word(), path, fits.word()));
            });
  }
}
