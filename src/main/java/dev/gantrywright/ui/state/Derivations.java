package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.ui.quantity.Shown;
import java.util.Optional;

/** What follows from a value, shown beside its field. */
public final class Derivations {
  private Derivations() {}

  /** The derived text beside the field at this path; empty where nothing follows. */
  public static Optional<String> beside(PrinterProfile profile, String path) {
    String[] keys = path.split("\\.", 3);
    if (keys[0].equals("axes") && keys.length == 3 && profile.axes().containsKey(keys[1])) {
      return ofAxis(profile.axes().get(keys[1]), keys[2]);
    }
    if (keys[0].equals("heaters") && keys.length == 3 && profile.heaters().containsKey(keys[1])) {
      return ofHeater(profile.heaters().get(keys[1]), keys[2]);
    }
    if (path.equals("supply.amps")
        && profile.supply().volts() != null
        && profile.supply().amps() != null) {
      return Optional.of(
          Texts.of(
              "derived.supply", Shown.rough(profile.supply().volts() * profile.supply().amps())));
    }
    if (path.equals("serial.baud") && profile.serial().baud() != null) {
      return Optional.of(Texts.of("derived.baud", Shown.rough(1e6 / profile.serial().baud())));
    }
    return Optional.empty();
  }

  private static Optional<String> ofHeater(Heater heater, String key) {
    Optional<Double> volts = given(heater.volts()).filter(each -> each > 0);
    return switch (key) {
      case "watts" ->
          given(heater.watts())
              .filter(watts -> watts > 0)
              .flatMap(
                  watts ->
                      volts.map(
                          v ->
                              Texts.of(
                                  "derived.heater",
                                  Shown.rough(HeaterPower.amps(v, watts)),
                                  Shown.rough(HeaterPower.ohms(v, watts)))));
      case "ohms" ->
          given(heater.ohms())
              .filter(ohms -> ohms > 0)
              .flatMap(
                  ohms ->
                      volts.map(
                          v ->
                              Texts.of(
                                  "derived.measured",
                                  Shown.rough(HeaterPower.watts(v, ohms)),
                                  Shown.rough(v))));
      default -> Optional.empty();
    };
  }

  private static Optional<String> ofAxis(Axis axis, String key) {
    return switch (key) {
      case "stepsPerMm" -> DriveFigures.formula(axis);
      case "motor.fullSteps" ->
          given(axis.motor().fullSteps())
              .map(steps -> Texts.of("derived.angle", Shown.rough(360.0 / steps)));
      case "maxSpeed" ->
          given(axis.maxSpeed())
              .flatMap(speed -> given(axis.stepsPerMm()).map(steps -> speed * steps / 1000))
              .map(kilohertz -> Texts.of("derived.rate", Shown.rough(kilohertz)));
      case "acceleration" ->
          given(axis.acceleration())
              .flatMap(
                  a ->
                      given(axis.maxSpeed())
                          .map(v -> Texts.of("derived.distance", Shown.rough(v * v / (2 * a)))));
      case "travelMax" ->
          given(axis.travelMax())
              .flatMap(high -> given(axis.travelMin()).map(low -> high - low))
              .map(span -> Texts.of("derived.travel", Shown.rough(span)));
      case "driver.current" ->
          given(axis.driver().current())
              .flatMap(amps -> given(axis.motor().ratedCurrent()).map(rated -> amps / rated))
              .map(share -> Texts.of("derived.ofRated", Shown.rough(share * 100)));
      case "drive.teeth" ->
          DriveFigures.travelOfATurn(axis)
              .map(travel -> Texts.of("drive.turn", Shown.rough(travel)));
      default -> Optional.empty();
    };
  }

  private static <N extends Number> Optional<Double> given(N number) {
    return number == null ? Optional.empty() : Optional.of(number.doubleValue());
  }
}
