package dev.gantrywright.rules.drivers;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The catalogue does not know this driver IC. */
@Rule(
    id = "GW-D014",
    slug = "driver-not-in-catalogue",
    level = Level.NOTE,
    family = Family.DRIVERS,
    summary = "The catalogue does not know this driver IC",
    reads = {"axes.*.driver.ic"},
    source = "the program's own catalogue")
public final class DriverNotInCatalogue implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              if (axis.driver().ic() != null && context.driver(axis).isEmpty()) {
                sink.report(
                    "axes." + name + ".driver.ic",
                    axis.driver().ic()
                        + " is not among the "
                        + context.catalog().drivers().size()
                        + " ICs of the catalogue: its limits stay unchecked");
              }
            });
  }
}
