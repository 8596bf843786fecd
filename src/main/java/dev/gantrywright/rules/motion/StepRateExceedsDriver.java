package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.physics.StepRate;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;

/** Top speed asks for shorter step pulses than the driver IC takes. */
@Rule(
    id = "GW-M005",
    slug = "step-rate-exceeds-driver",
    level = Level.ERROR,
    family = Family.MOTION,
    fix = Rule.Fix.REVIEW,
    summary = "Top speed asks for shorter step pulses than the driver IC takes",
    reads = {"axes.*.stepsPerMm", "axes.*.maxSpeed", "axes.*.driver.ic"},
    source = "the driver IC's data sheet, STEP minimum high and low time")
public final class StepRateExceedsDriver implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              DriverIc ic = context.driver(axis).orElse(null);
              if (ic == null || !known(axis.stepsPerMm(), axis.maxSpeed())) {
                return;
              }
              double hertz = StepRate.hertz(axis.stepsPerMm(), axis.maxSpeed());
              if (hertz > ic.maxStepHertz()) {
                double speed =
                    Math.floor(StepRate.speedMmPerSecond(ic.maxStepHertz(), axis.stepsPerMm()));
                String path = "axes." + name + ".maxSpeed";
                sink.sourced(
                    path,
                    Shown.hertz(hertz)
                        + " at "
                        + n(axis.maxSpeed())
                        + " mm/s; the "
                        + ic.ic()
                        + " takes "
                        + Shown.hertz(ic.maxStepHertz())
                        + ", pulses of "
                        + n(ic.stepHighSeconds() * 1e6)
                        + " µs and as much between them",
                    ic.source(),
                    Remedy.review("Limit to " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
