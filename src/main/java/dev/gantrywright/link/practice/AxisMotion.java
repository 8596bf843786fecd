package dev.gantrywright.link.practice;

/**
 * What the board keeps for one axis.
 *
 * @param letter as commands and stored settings spell it, such as {@code X}
 * @param stepsPerMm microsteps for a millimetre
 * @param maxSpeed mm/s
 * @param acceleration mm/s²
 * @param current motor current, A RMS; 0 where the board cannot set it
 */
public record AxisMotion(
    String letter, double stepsPerMm, double maxSpeed, double acceleration, double current) {
  AxisMotion with(Quantity quantity, double value) {
    return switch (quantity) {
      case STEPS_PER_MM -> new AxisMotion(letter, value, maxSpeed, acceleration, current);
      case MAX_SPEED -> new AxisMotion(letter, stepsPerMm, value, acceleration, current);
      case ACCELERATION -> new AxisMotion(letter, stepsPerMm, maxSpeed, value, current);
      case CURRENT -> new AxisMotion(letter, stepsPerMm, maxSpeed, acceleration, value);
    };
  }

  double get(Quantity quantity) {
    return switch (quantity) {
      case STEPS_PER_MM -> stepsPerMm;
      case MAX_SPEED -> maxSpeed;
      case ACCELERATION -> acceleration;
      case CURRENT -> current;
    };
  }

  /** What can be stored for an axis. */
  public enum Quantity {
    STEPS_PER_MM("M92", "steps/mm", "stepsPerMm"),
    MAX_SPEED("M203", "max speed", "maxSpeed"),
    ACCELERATION("M201", "acceleration", "acceleration"),
    CURRENT("M906", "current", "current");

    private final String command;
    private final String label;
    private final String field;

    Quantity(String command, String label, String field) {
      this.command = command;
      this.label = label;
      this.field = field;
    }

    String command() {
      return command;
    }

    String label() {
      return label;
    }

    /** As a fault spells it. */
    public String field() {
      return field;
    }
  }
}
