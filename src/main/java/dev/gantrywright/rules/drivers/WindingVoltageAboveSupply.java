package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.DriverCurrent;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The supply cannot drive the set current through the winding. */
@Rule(
    id = "GW-D017",
    slug = "winding-voltage-above-supply",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The supply cannot drive the set current through the winding",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.ohms",
      "supply.volts"
    },
    source = "Ohm's law at the peak of the current")
public final class WindingVoltageAboveSupply implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double volts = context.profile().supply().volts();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double amps =
                  RunCurrent.of(context, name, axis).map(RunCurrent::rmsAmps).orElse(null);
              Double ohms = axis.motor().ohms();
              if (known(volts, amps, ohms) && DriverCurrent.peakOfRms(amps) * ohms > volts * 0.8) {
                sink.report(
                    "axes." + name + ".motor.ohms",
                    about(DriverCurrent.peakOfRms(amps))
                        + " A peak through "
                        + n(ohms)
                        + " Ω needs "
                        + about(DriverCurrent.peakOfRms(amps) * ohms)
                        + " V; a chopper wants well below the supply of "
                        + n(volts)
                        + " V",
                    Remedy.show(
                        "measure the phase again, with the motor unplugged and the supply off"));
              }
            });
  }
}
