package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The current is above the rating of the board's driver socket. */
@Rule(
    id = "GW-D006",
    slug = "current-above-socket",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The current is above the rating of the board's driver socket",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.driver.socket"
    },
    source = "the board sheet's sockets")
public final class CurrentAboveSocket implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              RunCurrent run = RunCurrent.of(context, name, axis).orElse(null);
              Double most = context.socket(name, axis).map(DriverSocket::maxAmps).orElse(null);
              if (known(run, most) && run.rmsAmps() > most) {
                sink.report(
                    run.path(),
                    "found "
                        + run.words()
                        + ", the socket of the "
                        + context.boardName()
                        + " is rated "
                        + n(most)
                        + " A",
                    Remedy.review("Set " + n(most) + " A RMS", run.path(), run.valueFor(most)));
              }
            });
  }
}
