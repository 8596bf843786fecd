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
    reads = {"axes.*.driver.current", "axes.*.driver.socket"},
    source = "the board sheet's sockets")
public final class CurrentAboveSocket implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double set = axis.driver().current();
              Double most = context.socket(name, axis).map(DriverSocket::maxAmps).orElse(null);
              if (known(set, most) && set > most) {
                String path = "axes." + name + ".driver.current";
                sink.report(
                    path,
                    "found "
                        + n(set)
                        + " A RMS, the socket of the "
                        + context.boardName()
                        + " is rated "
                        + n(most)
                        + " A",
                    Remedy.review("Set " + n(most) + " A RMS", path, most));
              }
            });
  }
}
