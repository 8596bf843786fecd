package dev.gantrywright.prove;

import java.util.List;

/**
 * One endstop's line in the trace.
 *
 * @param end axis end
 * @param first when it was first seen
 * @param initially what it was then
 * @param transitions every change since, oldest first; the oldest are dropped beyond the cap
 * @param blanks the times at which it was not known, oldest first; the oldest are dropped likewise
 * @param chatter changes that were bounce: all but the first of each run
 * @param longestBounceNanos from the first to the last change of the longest run
 */
public record Strip(
    String end,
    long first,
    boolean initially,
    List<Transition> transitions,
    List<Blank> blanks,
    int chatter,
    long longestBounceNanos) {
  /**
   * A time at which no answer said what it was.
   *
   * @param from the first moment without an answer
   * @param until the first with one; {@link Long#MAX_VALUE} while there is none
   */
  public record Blank(long from, long until) {}

  public Strip {
    transitions = List.copyOf(transitions);
    blanks = List.copyOf(blanks);
  }

  /** What it is now. */
  public boolean triggered() {
    return transitions.isEmpty() ? initially : transitions.get(transitions.size() - 1).triggered();
  }

  /** Whether an answer said what it was at that moment. */
  public boolean knownAt(long nanos) {
    int low = 0;
    int high = blanks.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (blanks.get(middle).from() <= nanos) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return nanos >= first && (low == 0 || nanos >= blanks.get(low - 1).until());
  }

  /** The word for what it was at a moment. */
  public String wordAt(long nanos) {
    return knownAt(nanos) ? EndstopWord.of(triggeredAt(nanos)) : EndstopWord.UNKNOWN;
  }

  /** What it was at a moment within the strip, or last before it. */
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
