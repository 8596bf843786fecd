package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** One pin of the microcontroller has two jobs. */
@Rule(
    id = "GW-B020",
    slug = "pin-used-twice",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "One pin of the microcontroller has two jobs",
    reads = {
      "serial.port",
      "serial.secondPort",
      "endstops.*.pin",
      "endstops.*.fitted",
      "heaters.*.output",
      "heaters.*.input",
      "axes.*.driver.socket"
    },
    source = "the board sheet's pins")
public final class PinUsedTwice implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.sheet().isEmpty()) {
      return;
    }
    PinJobs jobs = PinJobs.of(context);
    jobs.shared()
        .forEach(
            (pin, uses) ->
                sink.report(
                    uses.get(1).path(),
                    pin + " serves " + uses.get(0).job() + " and " + uses.get(1).job(),
                    Remedy.show(
                        "move one of the two to another connector, or correct the board sheet")));
  }
}
