package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.physics.StepperSpeed;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** Resistance and inductance do not belong to one motor. */
@Rule(
    id = "GW-D022",
    slug = "winding-time-constant-unusual",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Resistance and inductance do not belong to one motor",
    reads = {"axes.*.motor.ohms", "axes.*.motor.millihenries"},
    source = "L / R of hybrid stepper motors, 0.5 to 5 ms in makers' sheets (memory)")
public final class WindingTimeConstantUnusual implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              Double ohms = axis.motor().ohms();
              Double henry = axis.motor().millihenries();
              if (!known(ohms, henry) || ohms <= 0 || henry <= 0) {
                return;
              }
              double millis = StepperSpeed.timeConstantSeconds(henry / 1000, ohms) * 1000;
              if (millis < 0.4 || millis > 6) {
                sink.report(
                    "axes." + name + ".motor.millihenries",
                    n(henry)
                        + " mH over "
                        + n(ohms)
                        + " Ω: a time constant of "
                        + about(millis)
                        + " ms, 0.5 to 5 ms are usual",
                    Remedy.show("check the decimal points on the motor's data sheet"));
              }
            });
  }
}
