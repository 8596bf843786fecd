package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.DriverHeat;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.physics.BridgeHeat;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** At this current the driver IC needs a heat sink or moving air. */
@Rule(
    id = "GW-D023",
    slug = "driver-runs-hot",
    level = Level.NOTE,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "At this current the driver IC needs a heat sink or moving air",
    reads = {
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic"
    },
    source = "P = 4 I² R of the two bridges (Joule); junction = air + P x thermal resistance")
public final class DriverRunsHot implements Check {
  /** Air in a closed electronics case, °C (common practice, no published source). */
  private static final double AIR = 50;

  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              RunCurrent run = RunCurrent.of(context, name, axis).orElse(null);
              DriverIc ic = context.driver(axis).orElse(null);
              DriverHeat heat = ic == null ? null : ic.heat().orElse(null);
              if (run == null || heat == null) {
                return;
              }
              double watts = BridgeHeat.watts(run.rmsAmps(), heat.onOhms());
              double junction = AIR + watts * heat.junctionToAirKelvinPerWatt();
              if (junction > heat.junctionMostCelsius()) {
                sink.sourced(
                    run.path(),
                    run.words() + ": " + evidence(ic, heat, watts, junction),
                    heat.source(),
                    Remedy.show(
                        "fit a heat sink and a fan, or stay below " + n(most(heat)) + " A RMS"));
              }
            });
  }

  private static String evidence(DriverIc ic, DriverHeat heat, double watts, double junction) {
    return n(Math.round(watts * 100) / 100.0)
        + " W in the "
        + ic.ic()
        + "; in air of "
        + n(AIR)
        + " °C at "
        + n(heat.junctionToAirKelvinPerWatt())
        + " K/W its junction would reach "
        + n(Math.round(junction))
        + " °C, "
        + n(heat.junctionMostCelsius())
        + " °C is the most";
  }

  private static double most(DriverHeat heat) {
    double amps =
        BridgeHeat.ampsFor(
            heat.junctionMostCelsius() - AIR, heat.junctionToAirKelvinPerWatt(), heat.onOhms());
    return Math.floor(amps * 100) / 100;
  }
}
