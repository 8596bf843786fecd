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
 * @param path the field that decides it
 * @param value that field's value
 */
record RunCurrent(double rmsAmps, String path, double value) {
  static Optional<RunCurrent> of(Context context, String name, Axis axis) {
    Double set = axis.driver().current();
    if (set != null) {
      return Optional.of(new RunCurrent(set, "axes." + name + ".driver.current", set));
    }
    return VrefCurrent.of(context.driver(axis), axis.driver())
        .map(
            current ->
                new RunCurrent(
                    current.rmsAmps(), "axes." + name + ".driver.vref", current.vrefVolts()));
  }

  /** As evidence shows it. */
  String words() {
    String amps = n(rmsAmps) + " A RMS";
    return path.endsWith("vref") ? n(value) + " V, which gives " + amps : amps;
  }

  /** The value of the field that gives another current. */
  double valueFor(double wantedRmsAmps) {
    return Double.parseDouble(n(Math.round(value * wantedRmsAmps / rmsAmps * 1000) / 1000.0));
  }
}
