package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A reference voltage is stated, but not the sense resistor. */
@Rule(
    id = "GW-D026",
    slug = "sense-resistor-not-stated",
    level = Level.NOTE,
    family = Family.DRIVERS,
    summary = "A reference voltage is stated, but not the sense resistor",
    reads = {"axes.*.driver.vref", "axes.*.driver.senseOhms", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, formula of the trip current")
public final class SenseResistorNotStated implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.driver().vref() != null
                  && axis.driver().senseOhms() == null
                  && context.driver(axis).isPresent()) {
                sink.report(
                    "axes." + name + ".driver.senseOhms",
                    "none stated beside "
                        + n(axis.driver().vref())
                        + " V: the motor's current stays unknown and unchecked");
              }
            });
  }
}
