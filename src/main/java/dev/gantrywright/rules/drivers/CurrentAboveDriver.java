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

/** The current is above what the driver IC bears. */
@Rule(
    id = "GW-D005",
    slug = "current-above-driver",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The current is above what the driver IC bears",
    reads = {"axes.*.driver.current", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, highest RMS current")
public final class CurrentAboveDriver implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              Double set = axis.driver().current();
              if (ic == null
                  || set == null
                  || ic.rmsAmps().isEmpty()
                  || set <= ic.rmsAmps().getAsDouble()) {
                return;
              }
              String path = "axes." + name + ".driver.current";
              double most = ic.rmsAmps().getAsDouble();
              double better = Double.parseDouble(n(Math.floor(most * 70) / 100));
              sink.sourced(
                  path,
                  "found "
                      + n(set)
                      + " A RMS; the "
                      + ic.ic()
                      + " bears "
                      + n(most)
                      + " A RMS, well cooled",
                  ic.source(),
                  Remedy.review("Set " + n(better) + " A RMS, 70 % of its limit", path, better));
            });
  }
}
