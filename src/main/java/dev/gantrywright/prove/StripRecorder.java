package dev.gantrywright.prove;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;

/** Collects one strip, and counts its bounce as it comes. */
final class StripRecorder {
  private final String end;
  private final long first;
  private final boolean initially;
  private final Deque<Transition> transitions = new ArrayDeque<>();
  private boolean triggered;
  private int chatter;
  private long longest;
  private long runStart;
  private long lastChange;
  private boolean changed;

  StripRecorder(String end, long nanos, boolean triggered) {
    this.end = end;
    this.first = nanos;
    this.initially = triggered;
    this.triggered = triggered;
  }

  void add(long nanos, boolean now) {
    if (now == triggered) {
      return;
    }
    triggered = now;
    if (changed && nanos - lastChange <= Trace.BOUNCE_NANOS) {
      chatter++;
      longest = Math.max(longest, nanos - runStart);
    } else {
      runStart = nanos;
    }
    changed = true;
    lastChange = nanos;
    transitions.addLast(new Transition(nanos, now));
    if (transitions.size() > Trace.LONGEST_STRIP) {
      transitions.removeFirst();
    }
  }

  Strip strip() {
    return new Strip(end, first, initially, new ArrayList<>(transitions), chatter, longest);
  }
}
