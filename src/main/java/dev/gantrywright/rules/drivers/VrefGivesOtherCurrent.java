package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Reference voltage and sense resistor give another current than stated. */
@Rule(
    id = "GW-D003",
    slug = "vref-gives-other-current",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "Reference voltage and sense resistor give another current than stated",
    reads = {
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.current",
      "axes.*.driver.ic"
    },
    source = "the driver IC's data sheet, formula of the trip current")
public final class VrefGivesOtherCurrent implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double set = axis.driver().current();
              VrefCurrent gives = VrefCurrent.of(context.driver(axis), axis.driver()).orElse(null);
              if (!known(set, gives) || Math.abs(gives.rmsAmps() / set - 1) <= 0.15) {
                return;
              }
              String path = "axes." + name + ".driver.vref";
              String slip =
                  Math.abs(set / gives.rmsAmps() - Math.sqrt(2)) < 0.05
                      ? "; what is stated is the peak, not RMS"
                      : "";
              double volts = Double.parseDouble(n(Math.round(gives.vrefFor(set) * 1000) / 1000.0));
              sink.sourced(
                  path,
                  "found "
                      + n(axis.driver().vref())
                      + " V at "
                      + n(axis.driver().senseOhms())
                      + " Ω: "
                      + about(gives.rmsAmps() * Math.sqrt(2))
                      + " A peak, "
                      + about(gives.rmsAmps())
                      + " A RMS; stated are "
                      + n(set)
                      + " A RMS"
                      + slip,
                  gives.source(),
                  Remedy.review("Trim to " + n(volts) + " V", path, volts),
                  Remedy.review(
                      "The current is " + about(gives.rmsAmps()) + " A RMS",
                      "axes." + name + ".driver.current",
                      Double.parseDouble(about(gives.rmsAmps()))));
            });
  }
}
