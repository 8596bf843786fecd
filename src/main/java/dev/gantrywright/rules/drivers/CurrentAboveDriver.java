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
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic"
    },
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
              RunCurrent run = RunCurrent.of(context, name, axis).orElse(null);
              if (ic == null
                  || run == null
                  || ic.rmsAmps().isEmpty()
                  || run.rmsAmps() <= ic.rmsAmps().getAsDouble()) {
                return;
              }
              double most = ic.rmsAmps().getAsDouble();
              double better = Double.parseDouble(n(Math.floor(most * 70) / 100));
              sink.sourced(
                  run.path(),
                  "found "
                      + run.words()
                      + "; the "
                      + ic.ic()
                      + " bears "
                      + n(most)
                      + " A RMS, well cooled",
                  ic.source(),
                  Remedy.review(
                      "Set " + n(better) + " A RMS, 70 % of its limit",
                      run.path(),
                      run.valueFor(better)));
            });
  }
}
