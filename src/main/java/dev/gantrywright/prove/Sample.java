package dev.gantrywright.prove;

import java.util.Map;

/**
 * The endstop states at one moment.
 *
 * @param nanos when the reply was complete, on the monotonic clock
 * @param latencyNanos from asking to the complete reply
 * @param validity whether the states are news
 * @param states axis end (or reported name, where it means none) to triggered; the last known ones
 *     where the sample is not valid
 */
public record Sample(
    long nanos, long latencyNanos, Validity validity, Map<String, Boolean> states) {
  /** What a live value is worth. */
  public enum Validity {
    VALID("live"),
    /** The machine did not answer this time. */
    STALE("stale"),
    DISCONNECTED("disconnected");

    private final String word;

    Validity(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
