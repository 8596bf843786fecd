package dev.gantrywright.rules.endstops;

import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.PullResistor;
import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.physics.InputLevel;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Optional;

/** The board pulls this input down while the part pulls it up. */
@Rule(
    id = "GW-E003",
    slug = "pulls-oppose",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.SAFE,
    summary = "The board pulls this input down while the part pulls it up",
    reads = {
      "endstops.*.input",
      "endstops.*.pin",
      "endstops.*.pullUp",
      "endstops.*.fitted",
      "board.mcu"
    },
    source = "a divider of both resistors (definition); the part's pull-up from its data sheet")
public final class PullsOppose implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              Optional<BoardInput> board = context.input(endstop);
              boolean down =
                  board
                      .map(in -> in.pull() == InputPull.PULL_DOWN)
                      .orElse(endstop.input() == InputPull.PULL_DOWN);
              if (!Levels.fitted(endstop) || !down || !Boolean.TRUE.equals(endstop.pullUp())) {
                return;
              }
              String divider = "";
              Double ohms = board.map(BoardInput::pullOhms).orElse(null);
              Optional<PullResistor> inside =
                  context.mcu().flatMap(mcu -> mcu.familyFacts().pullUp());
              if (ohms != null && inside.isPresent() && context.logicVolts().isPresent()) {
                double volts =
                    InputLevel.dividedVolts(
                        context.logicVolts().get(), inside.get().typicalOhms(), ohms);
                divider =
                    ": "
                        + n(inside.get().typicalOhms())
                        + " Ω up and "
                        + n(ohms)
                        + " Ω down leave "
                        + about(volts)
                        + " V";
              }
              String path = "endstops." + name + ".pullUp";
              sink.report(
                  path,
                  "found both" + divider,
                  Remedy.safe("Switch the part's own pull-up off", path, false));
            });
  }
}
