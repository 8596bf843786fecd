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

/** The jumpers select another number of microsteps than stated. */
@Rule(
    id = "GW-D009",
    slug = "microsteps-differ-from-jumpers",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The jumpers select another number of microsteps than stated",
    reads = {"axes.*.driver.microsteps", "axes.*.driver.socket"},
    source = "the board sheet's sockets; the driver IC's microstep table")
public final class MicrostepsDifferFromJumpers implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Integer stated = axis.driver().microsteps();
              Integer jumpers =
                  context.socket(name, axis).map(DriverSocket::microsteps).orElse(null);
              if (known(stated, jumpers) && !stated.equals(jumpers)) {
                String path = "axes." + name + ".driver.microsteps";
                sink.report(
                    path,
                    "found "
                        + stated
                        + ", the jumpers select "
                        + jumpers
                        + ": every length would be "
                        + n((double) stated / jumpers)
                        + " times as long",
                    Remedy.review("Take the jumpers' " + jumpers, path, jumpers));
              }
            });
  }
}
