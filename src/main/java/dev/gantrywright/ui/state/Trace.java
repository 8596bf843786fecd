package dev.gantrywright.ui.state;

import dev.gantrywright.prove.Stretch;
import java.util.List;

/**
 * Endstop states over time, the newest {@link #CAPACITY} samples. Written by the watch's thread,
 * read by the view's.
 */
public final class Trace {
  /** Samples kept: five minutes at 50 Hz. */
  public static final int CAPACITY = 15_000;

  private final List<String> ends;
  private final long[] nanos = new long[CAPACITY];
  private final int[] touched = new int[CAPACITY];
  private final int[] known = new int[CAPACITY];
  private long count;

  /**
   * @param ends the axis ends that are traced, at most 32
   */
  public Trace(List<String> ends) {
    this.ends = List.copyOf(ends);
  }

  public List<String> ends() {
    return ends;
  }

  /**
   * Adds a sample.
   *
   * @param at on the monotonic clock
   * @param states by axis end; what it lacks is not known at this moment
   */
  public synchronized void add(long at, java.util.Map<String, Boolean> states) {
    int on = 0;
    int told = 0;
    for (int i = 0; i < ends.size(); i++) {
      Boolean state = states.get(ends.get(i));
      if (state != null) {
        told |= 1 << i;
        on |= state ? 1 << i : 0;
      }
    }
    int slot = (int) (count % CAPACITY);
    nanos[slot] = at;
    touched[slot] = on;
    known[slot] = told;
    count++;
  }

  public synchronized long count() {
    return count;
  }

  /** When the oldest sample that is kept came; 0 before there is one. */
  public synchronized long oldest() {
    return count == 0 ? 0 : at((int) Math.min(count, CAPACITY), 0);
  }

  /** The samples since a moment, oldest first, with the one before them. */
  public synchronized Stretch since(long from) {
    int kept = (int) Math.min(count, CAPACITY);
    int first = Math.max(0, firstSince(kept, from) - 1);
    int length = kept - first;
    Stretch stretch = new Stretch(ends, new long[length], new int[length], new int[length]);
    for (int i = 0; i < length; i++) {
      int slot = slot(kept, first + i);
      stretch.nanos()[i] = nanos[slot];
      stretch.touched()[i] = touched[slot];
      stretch.known()[i] = known[slot];
    }
    return stretch;
  }

  /** All that is kept. */
  public Stretch all() {
    return since(Long.MIN_VALUE);
  }

  /** The first of the kept samples that is not before a moment. */
  private int firstSince(int kept, long from) {
    int low = 0;
    int high = kept;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (at(kept, middle) >= from) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private long at(int kept, int index) {
    return nanos[slot(kept, index)];
  }

  private int slot(int kept, int index) {
    return (int) ((count - kept + index) % CAPACITY);
  }
}
