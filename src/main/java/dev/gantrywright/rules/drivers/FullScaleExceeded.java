package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.CurrentRule;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.physics.DriverCurrent;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The sense resistors do not let the driver reach this current. */
@Rule(
    id = "GW-D004",
    slug = "full-scale-exceeded",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The sense resistors do not let the driver reach this current",
    reads = {"axes.*.driver.current", "axes.*.driver.senseOhms", "axes.*.driver.ic"},
    source =
        "TMC2209 data sheet section 9: IRMS = (CS + 1) / 32 x VFS / (Rs + 20 mΩ) / √2; likewise for its kin")
public final class FullScaleExceeded implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              if (ic == null
                  || !known(axis.driver().current(), axis.driver().senseOhms())
                  || ic.current().kind() == CurrentRule.Kind.VREF) {
                return;
              }
              CurrentRule rule = ic.current();
              double most =
                  DriverCurrent.scaledRmsAmps(
                      31, rule.fullScaleVolts(), axis.driver().senseOhms(), rule.internalOhms());
              if (axis.driver().current() > most) {
                String path = "axes." + name + ".driver.current";
                double better = Math.floor(most * 100) / 100;
                sink.sourced(
                    path,
                    "found "
                        + n(axis.driver().current())
                        + " A RMS; "
                        + n(axis.driver().senseOhms())
                        + " Ω make "
                        + about(most)
                        + " A RMS at full scale",
                    ic.source(),
                    Remedy.review("Set " + n(better) + " A RMS", path, better));
              }
            });
  }
}
