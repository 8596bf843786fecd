package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.PullResistor;
import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The part's own pull-up is on beside the board's. */
@Rule(
    id = "GW-E025",
    slug = "pull-ups-in-parallel",
    level = Level.NOTE,
    family = Family.ENDSTOPS,
    summary = "The part's own pull-up is on beside the board's",
    reads = {
      "endstops.*.pullUp",
      "endstops.*.input",
      "endstops.*.pin",
      "endstops.*.fitted",
      "board.mcu"
    },
    source = "resistors in parallel (definition); the part's pull-up from its data sheet")
public final class PullUpsInParallel implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              Double board =
                  context
                      .input(endstop)
                      .filter(in -> in.pull() == InputPull.PULL_UP)
                      .map(BoardInput::pullOhms)
                      .orElse(null);
              Double inside =
                  context
                      .mcu()
                      .flatMap(mcu -> mcu.familyFacts().pullUp())
                      .map(PullResistor::typicalOhms)
                      .orElse(null);
              if (Levels.fitted(endstop)
                  && endstop.input() == InputPull.PULL_UP
                  && Boolean.TRUE.equals(endstop.pullUp())
                  && known(board, inside)) {
                sink.report(
                    "endstops." + name + ".pullUp",
                    n(board)
                        + " Ω on the board and "
                        + n(inside)
                        + " Ω in the part make "
                        + about(board * inside / (board + inside))
                        + " Ω; the board's alone does it");
              }
            });
  }
}
