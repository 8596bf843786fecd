package dev.gantrywright.link.practice;

/**
 * One endstop as it is wired, and as the firmware was built for it.
 *
 * @param name axis end, such as {@code xMin}
 * @param contact of the switch or sensor at rest
 * @param pull what holds the input
 * @param sensor what makes the contact
 * @param inverted whether the firmware was told to read a low input as triggered
 */
public record EndstopInput(
    String name, Contact contact, Pull pull, Sensor sensor, boolean inverted) {
  /** The contact at rest. */
  public enum Contact {
    NO,
    NC
  }

  /** What holds the input while nothing drives it. */
  public enum Pull {
    UP,
    DOWN,
    /** The sensor's own output stage drives both levels. */
    DRIVEN,
    /** Nothing: an open contact leaves the input floating. */
    NONE
  }

  /** What makes the contact. */
  public enum Sensor {
    /** A plain switch: to ground, or to the supply where the input is pulled down. */
    SWITCH,
    /** Open collector that sinks. */
    NPN,
    /** Open collector that sources. */
    PNP
  }

  /** An electrical level at the input. */
  public enum Level {
    LOW,
    HIGH,
    FLOATING
  }

  /**
   * The level at the input.
   *
   * @param touched whether the machine touches the switch, or the sensor sees its target
   */
  public Level level(boolean touched) {
    boolean made = (contact == Contact.NO) == touched;
    if (pull == Pull.DRIVEN) {
      boolean sinks = sensor != Sensor.PNP;
      return made == sinks ? Level.LOW : Level.HIGH;
    }
    if (made) {
      return switch (sensor) {
        case SWITCH -> pull == Pull.DOWN ? Level.HIGH : Level.LOW;
        case NPN -> Level.LOW;
        case PNP -> Level.HIGH;
      };
    }
    return open();
  }

  /** The level when the wire is off. */
  public Level open() {
    return switch (pull) {
      case UP -> Level.HIGH;
      case DOWN -> Level.LOW;
      case DRIVEN, NONE -> Level.FLOATING;
    };
  }
}
