package dev.gantrywright.rules.drivers;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.rules.Context;
import java.util.Optional;

/**
 * The current that flows through a motor: the one that the firmware sets, or else the one that the
 * trimmed reference voltage gives.
 *
 * @param rmsAmps A RMS
 * @param axis the axis that the motor turns
 * @param byVref whether the reference voltage decides it
 * @param value of the field that decides it
 */
public record RunCurrent(double rmsAmps, String axis, boolean byVref, double value) {
  /** Empty where neither current nor reference voltage tells. */
  public static Optional<RunCurrent> of(Context context, String name, Axis axis) {
    Double set = axis.driver().current();
    if (set != null) {
      return Optional.of(new RunCurrent(set, name, false, set));
    }
    return VrefCurrent.of(context.driver(axis), axis.driver())
        .map(current -> new RunCurrent(current.rmsAmps(), name, true, current.vrefVolts()));
  }

  /** The field that decides it. */
  String path() {
    return "axes." + axis + (byVref ? ".driver.vref" : ".driver.current");
  }

  /** As evidence shows it. */
  String words() {
    String amps = n(rmsAmps) + " A RMS";
    return byVref ? n(value) + " V, which gives " + amps : amps;
  }

  /** The value of the field that gives another current. */
  double valueFor(double wantedRmsAmps) {
    return Double.parseDouble(n(Math.round(value * wantedRmsAmps / rmsAmps * 1000) / 1000.0));
  }
}
