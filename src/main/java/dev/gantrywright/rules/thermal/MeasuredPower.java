package dev.gantrywright.rules.thermal;

import static dev.gantrywright.rules.Known.known;
import static dev.gantrywright.rules.Shown.about;
import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.machine.Heater;
import dev.gantrywright.physics.HeaterPower;
import java.util.Optional;

/**
 * The power that a heater's measured resistance makes, beside the one that is stated.
 *
 * @param ohms measured, Ω
 * @param volts for which the heater is made, V
 * @param stated power, W
 */
record MeasuredPower(double ohms, double volts, double stated) {
  /** Empty where one of the three is not stated. */
  static Optional<MeasuredPower> of(Heater heater) {
    return known(heater.ohms(), heater.volts(), heater.watts())
            && heater.ohms() > 0
            && heater.volts() > 0
            && heater.watts() > 0
        ? Optional.of(new MeasuredPower(heater.ohms(), heater.volts(), heater.watts()))
        : Optional.empty();
  }

  /** How many times the stated power it makes. */
  double times() {
    return HeaterPower.watts(volts, ohms) / stated;
  }

  String words() {
    return "measured "
        + n(ohms)
        + " Ω: "
        + about(HeaterPower.watts(volts, ohms))
        + " W at "
        + n(volts)
        + " V; "
        + n(stated)
        + " W make "
        + about(HeaterPower.ohms(volts, stated))
        + " Ω";
  }
}
