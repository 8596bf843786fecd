package dev.gantrywright.prove;

import java.util.List;

/**
 * One endstop's line in the trace.
 *
 * @param end axis end
 * @param first when it was first seen
 * @param initially what it was then
 * @param transitions every change since, oldest first; the oldest are dropped beyond the cap
 * @param chatter changes that were bounce: all but the first of each run
 * @param longestBounceNanos from the first to the last change of the longest run
 */
public record Strip(
    String end,
    long first,
    boolean initially,
    List<Transition> transitions,
    int chatter,
    long longestBounceNanos) {
  public Strip {
    transitions = List.copyOf(transitions);
  }

  /** What it is now. */
  public boolean triggered() {
    return transitions.isEmpty() ? initially : transitions.get(transitions.size() - 1).triggered();
  }

  /** What it was at a moment within the strip. */
  public boolean triggeredAt(long nanos) {
    int low = 0;
    int high = transitions.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (transitions.get(middle).nanos() - nanos <= 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    if (low > 0) {
      return transitions.get(low - 1).triggered();
    }
    return transitions.isEmpty() ? initially : !transitions.get(0).triggered();
  }
}
