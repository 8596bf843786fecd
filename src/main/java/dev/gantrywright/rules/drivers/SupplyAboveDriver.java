package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The supply is above what the driver IC bears. */
@Rule(
    id = "GW-D010",
    slug = "supply-above-driver",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The supply is above what the driver IC bears",
    reads = {"supply.volts", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, motor supply")
public final class SupplyAboveDriver implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double volts = context.profile().supply().volts();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              if (volts != null && ic != null && volts > ic.supplyMostVolts()) {
                sink.sourced(
                    "axes." + name + ".driver.ic",
                    n(volts)
                        + " V supply; the "
                        + ic.ic()
                        + " bears "
                        + n(ic.supplyMostVolts())
                        + " V, and a braking motor adds to it",
                    ic.source(),
                    Remedy.show(
                        "use a driver for "
                            + n(volts)
                            + " V, or a lower supply; change neither under power"));
              }
            });
  }
}
