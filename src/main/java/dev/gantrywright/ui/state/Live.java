package dev.gantrywright.ui.state;

import java.util.Map;

/**
 * The endstop states as last seen.
 *
 * @param states by axis end
 * @param fresh false where the machine did not answer: the states are the last known ones
 * @param milliseconds from asking to the whole answer
 * @param hertz answers a second over the last two seconds
 */
public record Live(
    Map<String, ContactState> states, boolean fresh, double milliseconds, double hertz) {
  public Live {
    states = Map.copyOf(states);
  }

  public static Live nothing() {
    return new Live(Map.of(), false, 0, 0);
  }

  public ContactState of(String end) {
    return states.getOrDefault(end, ContactState.UNKNOWN);
  }
}
