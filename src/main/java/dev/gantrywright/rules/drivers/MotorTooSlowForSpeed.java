package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.DriverCurrent;
import dev.gantrywright.physics.StepRate;
import dev.gantrywright.physics.StepperSpeed;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** The supply cannot turn the motor's current round fast enough for the top speed. */
@Rule(
    id = "GW-D015",
    slug = "motor-too-slow-for-speed",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.REVIEW,
    summary = "The supply cannot turn the motor's current round fast enough for the top speed",
    reads = {
      "axes.*.maxSpeed",
      "axes.*.stepsPerMm",
      "axes.*.driver.microsteps",
      "axes.*.driver.current",
      "axes.*.driver.vref",
      "axes.*.driver.senseOhms",
      "axes.*.driver.ic",
      "axes.*.motor.millihenries",
      "supply.volts"
    },
    source =
        "V = L dI/dt over one full step from -I to +I: f = V / (2 L I); back-EMF and resistance only lower it")
public final class MotorTooSlowForSpeed implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Double volts = context.profile().supply().volts();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double henry = axis.motor().millihenries();
              Double amps =
                  RunCurrent.of(context, name, axis).map(RunCurrent::rmsAmps).orElse(null);
              if (!known(
                      volts,
                      henry,
                      amps,
                      axis.maxSpeed(),
                      axis.stepsPerMm(),
                      axis.driver().microsteps())
                  || volts <= 0) {
                return;
              }
              double most =
                  1
                      / StepperSpeed.fullStepSeconds(
                          volts, henry / 1000, DriverCurrent.peakOfRms(amps));
              double asked =
                  StepRate.hertz(axis.stepsPerMm(), axis.maxSpeed()) / axis.driver().microsteps();
              if (asked > most) {
                double speed = Math.floor(most * axis.driver().microsteps() / axis.stepsPerMm());
                String path = "axes." + name + ".maxSpeed";
                sink.report(
                    path,
                    n(axis.maxSpeed())
                        + " mm/s asks for "
                        + about(asked)
                        + " full steps a second; "
                        + n(volts)
                        + " V through "
                        + n(henry)
                        + " mH at "
                        + n(amps)
                        + " A RMS make "
                        + about(most)
                        + " at best",
                    Remedy.review("Limit to " + n(speed) + " mm/s", path, speed));
              }
            });
  }
}
