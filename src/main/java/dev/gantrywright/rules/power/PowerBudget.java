package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.drivers.RunCurrent;
import java.util.Map;
import java.util.Optional;

/**
 * What the low-voltage supply has to give with everything on.
 *
 * @param heaterAmps sum of the heaters, A; mains heaters are not fed by it
 * @param motorAmps sum of the motors at rest, A
 * @param volts the supply's voltage, V
 * @param whole whether the load of every heater is stated; where not, there is more to come
 */
record PowerBudget(double heaterAmps, double motorAmps, double volts, boolean whole) {
  /** Empty where the supply's voltage is unknown. */
  static Optional<PowerBudget> of(Context context) {
    PrinterProfile profile = context.profile();
    Double volts = profile.supply().volts();
    if (volts == null || volts <= 0) {
      return Optional.empty();
    }
    double heaters = 0;
    boolean whole = true;
    for (Heater heater : profile.heaters().values()) {
      whole &= known(heater.watts(), heater.volts());
      if (known(heater.watts(), heater.volts())
          && heater.volts() > 0
          && heater.volts() < Context.MAINS_VOLTS) {
        double ohms = HeaterPower.ohms(heater.volts(), Math.max(heater.watts(), 1e-6));
        heaters += volts / ohms;
      }
    }
    double motors = 0;
    for (Map.Entry<String, Axis> named : profile.axes().entrySet()) {
      Axis axis = named.getValue();
      Double amps =
          RunCurrent.of(context, named.getKey(), axis).map(RunCurrent::rmsAmps).orElse(null);
      if (known(amps, axis.motor().ohms())) {
        motors += 2 * amps * amps * axis.motor().ohms() / volts;
      }
    }
    return Optional.of(new PowerBudget(heaters, motors, volts, whole));
  }

  double amps() {
    return heaterAmps + motorAmps;
  }

  String words() {
    return "heaters "
        + about(heaterAmps)
        + " A and motors "
        + about(motorAmps)
        + " A make "
        + about(amps())
        + " A at "
        + n(volts)
        + " V";
  }
}
