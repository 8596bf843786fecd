package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The stated sense resistor is not the board's. */
@Rule(
    id = "GW-D007",
    slug = "sense-resistor-differs",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The stated sense resistor is not the board's",
    reads = {"axes.*.driver.senseOhms", "axes.*.driver.socket"},
    source = "the board sheet's sockets")
public final class SenseResistorDiffers implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double stated = axis.driver().senseOhms();
              Double fitted = context.socket(name, axis).map(DriverSocket::senseOhms).orElse(null);
              if (known(stated, fitted) && Math.abs(stated / fitted - 1) > 0.02) {
                String path = "axes." + name + ".driver.senseOhms";
                sink.report(
                    path,
                    "found "
                        + n(stated)
                        + " Ω, the board fits "
                        + n(fitted)
                        + " Ω: the current would be "
                        + about(stated / fitted)
                        + " times what is set",
                    Remedy.review("Take the board's " + n(fitted) + " Ω", path, fitted));
              }
            });
  }
}
