package dev.gantrywright.rules.power;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.rules.Context;
import java.util.Optional;

/**
 * What the low-voltage supply has to give with everything on.
 *
 * @param heaterAmps sum of the heaters, A; mains heaters are not fed by it
 * @param motorAmps sum of the motors at rest, A
 * @param volts the supply's voltage, V
 */
record PowerBudget(double heaterAmps, double motorAmps, double volts) {
  /** Empty where the supply's voltage is unknown. */
  static Optional<PowerBudget> of(PrinterProfile profile) {
    Double volts = profile.supply().volts();
    if (volts == null || volts <= 0) {
      return Optional.empty();
    }
    double heaters = 0;
    for (Heater heater : profile.heaters().values()) {
      if (known(heater.watts(), heater.volts())
          && heater.volts() > 0
          && heater.volts() < Context.MAINS_VOLTS) {
        double ohms = HeaterPower.ohms(heater.volts(), Math.max(heater.watts(), 1e-6));
        heaters += volts / ohms;
      }
    }
    double motors = 0;
    for (Axis axis : profile.axes().values()) {
      Double amps = axis.driver().current();
      if (known(amps, axis.motor().ohms())) {
        motors += 2 * amps * amps * axis.motor().ohms() / volts;
      }
    }
    return Optional.of(new PowerBudget(heaters, motors, volts));
  }

  double amps() {
    return heaterAmps + motorAmps;
  }

  String words() {
    return "heaters "
        + n(heaterAmps)
        + " A and motors "
        + n(motorAmps)
        + " A make "
        + n(amps())
        + " A at "
        + n(volts)
        + " V";
  }
}
