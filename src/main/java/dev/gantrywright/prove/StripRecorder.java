package dev.gantrywright.prove;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Collects one strip, and counts its bounce as it comes. */
final class StripRecorder {
  private final String end;
  private final long first;
  private final boolean initially;
  private final Deque<Transition> transitions = new ArrayDeque<>();
  private final Deque<Strip.Blank> blanks = new ArrayDeque<>();
  private boolean triggered;
  private int chatter;
  private long longest;
  private long runStart;
  private long lastChange;
  private boolean changed;
  private boolean known = true;
  private long blankFrom;

  StripRecorder(String end, long nanos, boolean triggered) {
    this.end = end;
    this.first = nanos;
    this.initially = triggered;
    this.triggered = triggered;
  }

  /** Nobody said what it is at this moment. */
  void blank(long nanos) {
    if (known) {
      known = false;
      blankFrom = nanos;
    }
  }

  void add(long nanos, boolean now) {
    if (!known) {
      known = true;
      blanks.addLast(new Strip.Blank(blankFrom, nanos));
      if (blanks.size() > Trace.LONGEST_STRIP) {
        blanks.removeFirst();
      }
    }
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
    List<Strip.Blank> all = new ArrayList<>(blanks);
    if (!known) {
      all.add(new Strip.Blank(blankFrom, Long.MAX_VALUE));
    }
    return new Strip(end, first, initially, List.copyOf(transitions), all, chatter, longest);
  }
}
