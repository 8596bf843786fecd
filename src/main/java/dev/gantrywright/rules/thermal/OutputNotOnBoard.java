package dev.gantrywright.rules.thermal;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The board has no output or sensor input of this name. */
@Rule(
    id = "GW-T016",
    slug = "output-not-on-board",
    level = Level.ERROR,
    family = Family.THERMAL,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The board has no output or sensor input of this name",
    reads = {"heaters.*.output", "heaters.*.input"},
    source = "the board sheet's outputs and sensor inputs")
public final class OutputNotOnBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.sheet().isEmpty()) {
      return;
    }
    BoardSheet sheet = context.sheet().get();
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              if (heater.output() != null
                  && !sheet.outputs().isEmpty()
                  && !sheet.outputs().containsKey(heater.output())) {
                sink.report(
                    "heaters." + name + ".output",
                    "found "
                        + heater.output()
                        + "; the "
                        + context.boardName()
                        + " has "
                        + String.join(", ", sheet.outputs().keySet()),
                    Remedy.show("state the name that is printed beside the terminal"));
              }
              if (heater.input() != null
                  && !sheet.sensors().isEmpty()
                  && !sheet.sensors().containsKey(heater.input())) {
                sink.report(
                    "heaters." + name + ".input",
                    "found "
                        + heater.input()
                        + "; the "
                        + context.boardName()
                        + " has "
                        + String.join(", ", sheet.sensors().keySet()),
                    Remedy.show("state the name that is printed beside the socket"));
              }
            });
  }
}
