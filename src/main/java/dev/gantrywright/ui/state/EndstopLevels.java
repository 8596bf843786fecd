package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;

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
    UNKNOWN;

    Level opposite() {
      return switch (this) {
        case LOW -> HIGH;
        case HIGH -> LOW;
        default -> this;
      };
    }
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
    Level conducting = conducting(sensor, pull);
    Level blocked =
        switch (pull) {
          case PULL_UP -> Level.HIGH;
          case PULL_DOWN -> Level.LOW;
          case DRIVEN -> conducting.opposite();
          case NONE -> Level.FLOATING;
        };
    boolean closedAtRest = contact == Contact.NC;
    return new EndstopLevels(
        closedAtRest ? conducting : blocked,
        closedAtRest ? blocked : conducting,
        endstop.inverted());
  }

  private static Level conducting(SensorKind sensor, InputPull pull) {
    return switch (sensor) {
      case NPN -> Level.LOW;
      case PNP -> Level.HIGH;
      case SWITCH -> pull == InputPull.PULL_DOWN ? Level.HIGH : Level.LOW;
    };
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
