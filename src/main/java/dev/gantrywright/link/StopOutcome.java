package dev.gantrywright.link;

/**
 * What came back after the stop command.
 *
 * @param confirmed whether the machine said that it stopped, or restarted
 * @param answer the line that says so; empty when none came
 * @param nanos from sending to that line, or to giving up
 */
public record StopOutcome(boolean confirmed, String answer, long nanos) {
  /** For the user, who may have to act with the hand. */
  public String advice() {
    return confirmed
        ? "The machine confirmed the stop: " + answer
        : "No answer to the stop command: switch the power off";
  }
}
