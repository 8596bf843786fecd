package dev.gantrywright.physics;

import java.util.Optional;

/**
 * What an endstop input reads at rest, when the machine touches it, and when its wire is broken.
 *
 * <p>Source: identities of contact and pull; principle "de-energise to trip" (ISO 13849, IEC
 * 60204-1 practice); NPN sinks and PNP sources after IEC 60947-5-2.
 *
 * <p>A switch works against the pull: to ground under a pull-up, to the supply over a pull-down. On
 * a driven input, one whose board or sensor carries the pull, a switch is taken to close to ground.
 */
public final class EndstopLogic {

  /** Whether the contact or output is off or on at rest. */
  public enum Contact {
    NO,
    NC
  }

  /** What holds the input when nothing drives it. */
  public enum Input {
    PULL_UP,
    PULL_DOWN,
    DRIVEN
  }

  /** What drives the input. */
  public enum Sensor {
    SWITCH,
    NPN,
    PNP
  }

  /** The level of an input. */
  public enum Level {
    LOW,
    HIGH;

    Level other() {
      return this == LOW ? HIGH : LOW;
    }
  }

  /**
   * One line of the truth table.
   *
   * @param idle level at rest
   * @param pressed level when the machine touches the switch
   * @param broken level with a broken wire, empty where the input then floats
   */
  public record Outcome(Level idle, Level pressed, Optional<Level> broken) {

    /** True where the level does change, so that the input can tell anything. */
    public boolean tells() {
      return idle != pressed;
    }

    /** True where low means pressed. */
    public boolean activeLow() {
      return pressed == Level.LOW;
    }

    /** True where a broken wire reads as pressed, so that the machine stops instead of crashing. */
    public boolean brokenWireDetected() {
      return tells() && broken.filter(level -> level == pressed).isPresent();
    }
  }

  private EndstopLogic() {}

  /** The levels of one combination. */
  public static Outcome of(Contact contact, Input input, Sensor sensor) {
    Level on = drivenLevel(input, sensor);
    Level off = offLevel(input, on);
    return new Outcome(
        contact == Contact.NO ? off : on,
        contact == Contact.NO ? on : off,
        input == Input.DRIVEN ? Optional.empty() : Optional.of(off));
  }

  private static Level drivenLevel(Input input, Sensor sensor) {
    return switch (sensor) {
      case NPN -> Level.LOW;
      case PNP -> Level.HIGH;
      case SWITCH -> input == Input.PULL_DOWN ? Level.HIGH : Level.LOW;
    };
  }

  private static Level offLevel(Input input, Level on) {
    return switch (input) {
      case PULL_UP -> Level.HIGH;
      case PULL_DOWN -> Level.LOW;
      case DRIVEN -> on.other();
    };
  }
}
