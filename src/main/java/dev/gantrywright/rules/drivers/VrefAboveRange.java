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

/** The reference voltage is beyond the driver IC's range. */
@Rule(
    id = "GW-D019",
    slug = "vref-above-range",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The reference voltage is beyond the driver IC's range",
    reads = {"axes.*.driver.vref", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, reference input")
public final class VrefAboveRange implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              Double vref = axis.driver().vref();
              if (ic == null || vref == null || ic.current().vrefMostVolts().isEmpty()) {
                return;
              }
              double most = ic.current().vrefMostVolts().getAsDouble();
              if (vref > most) {
                sink.sourced(
                    "axes." + name + ".driver.vref",
                    "found " + n(vref) + " V; the " + ic.ic() + " takes up to " + n(most) + " V",
                    ic.source(),
                    Remedy.show("turn the trimmer down, and mind which pin was measured"));
              }
            });
  }
}
