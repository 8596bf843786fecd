package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The firmware sets a current, but no line reaches the driver. */
@Rule(
    id = "GW-D018",
    slug = "driver-current-not-listened-to",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The firmware sets a current, but no line reaches the driver",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.socket",
      "axes.*.driver.ic"
    },
    source = "the board sheet's sockets; the driver IC's data sheet")
public final class DriverCurrentNotListenedTo implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              DriverSocket socket = context.socket(name, axis).orElse(null);
              if (ic == null
                  || socket == null
                  || axis.driver().current() == null
                  || axis.driver().vref() != null) {
                return;
              }
              if (socket.uart() == null) {
                sink.report(
                    "axes." + name + ".driver.current",
                    n(axis.driver().current())
                        + " A stated, but the socket has no line to the "
                        + ic.ic()
                        + " and no reference voltage is given",
                    Remedy.show(
                        "measure and state the reference voltage; caution, it is measured under power"));
              }
            });
  }
}
