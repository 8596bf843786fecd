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

/** The supply is below what the driver IC needs. */
@Rule(
    id = "GW-D011",
    slug = "supply-below-driver",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The supply is below what the driver IC needs",
    reads = {"supply.volts", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, motor supply")
public final class SupplyBelowDriver implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double volts = context.profile().supply().volts();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              if (volts != null && ic != null && volts < ic.supplyLeastVolts()) {
                sink.sourced(
                    "axes." + name + ".driver.ic",
                    n(volts)
                        + " V supply; the "
                        + ic.ic()
                        + " needs "
                        + n(ic.supplyLeastVolts())
                        + " V",
                    ic.source(),
                    Remedy.show("check the figure of the supply"));
              }
            });
  }
}
