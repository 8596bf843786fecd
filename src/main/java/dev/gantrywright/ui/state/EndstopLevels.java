package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;
import dev.gantrywright.physics.EndstopLogic;

/**
 * The levels at an endstop's input and what the firmware makes of them.
 *
 * @param rest at rest
 * @param touched when touched
 * @param inverted whether the firmware turns the reading round; null where not given
 */
public record EndstopLevels(Level rest, Level touched, Boolean inverted) {
  /** Level at the input pin. */
  public enum Level {
    LOW,
    HIGH,
    /** Nothing holds the input. */
    FLOATING,
    /** The description does not say enough. */
    UNKNOWN
  }

  /** From contact, sensor and pull; a plain switch to 0 V where the sensor is not given. */
  public static EndstopLevels of(Endstop endstop) {
    InputPull pull =
        endstop.input() == InputPull.NONE && Boolean.TRUE.equals(endstop.pullUp())
            ? InputPull.PULL_UP
            : endstop.input();
    Contact contact = endstop.contact();
    if (contact == null || pull == null) {
      return new EndstopLevels(Level.UNKNOWN, Level.UNKNOWN, endstop.inverted());
    }
    SensorKind sensor = endstop.sensor() == null ? SensorKind.SWITCH : endstop.sensor();
    EndstopLogic.Outcome outcome =
        EndstopLogic.of(
            EndstopLogic.Contact.valueOf(contact.name()),
            // A conducting contact decides alone, so that an input with no pull is like a pulled
            // one as long as the contact conducts.
            pull == InputPull.NONE
                ? EndstopLogic.Input.PULL_UP
                : EndstopLogic.Input.valueOf(pull.name()),
            EndstopLogic.Sensor.valueOf(sensor.name()));
    boolean closedAtRest = contact == Contact.NC;
    boolean floats = pull == InputPull.NONE;
    return new EndstopLevels(
        floats && !closedAtRest ? Level.FLOATING : Level.valueOf(outcome.idle().name()),
        floats && closedAtRest ? Level.FLOATING : Level.valueOf(outcome.pressed().name()),
        endstop.inverted());
  }

  /** What the firmware reads at this level; null where that is not determined. */
  public Boolean triggered(Level level) {
    if (inverted == null || level == Level.FLOATING || level == Level.UNKNOWN) {
      return null;
    }
    return (level == Level.HIGH) != inverted;
  }

  /** Whether the firmware reads triggered exactly when touched; null where undetermined. */
  public Boolean agrees() {
    Boolean atRest = triggered(rest);
    Boolean whenTouched = triggered(touched);
    return atRest == null || whenTouched == null ? null : !atRest && whenTouched;
  }
}
