package dev.gantrywright.prove;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of samples of the endstops, as bits: minutes of them are small enough to be copied and
 * looked at while more come in.
 *
 * @param ends axis ends, at most 32, in the order of the bits
 * @param nanos when, ascending, on the monotonic clock
 * @param touched bit i: whether end i was triggered
 * @param known bit i: whether end i was reported
 */
@SuppressWarnings("ArrayRecordComponent")
public record Stretch(List<String> ends, long[] nanos, int[] touched, int[] known) {

  public boolean isEmpty() {
    return nanos.length == 0;
  }

  /** When its first sample came; 0 where it has none. */
  public long first() {
    return isEmpty() ? 0 : nanos[0];
  }

  public long last() {
    return isEmpty() ? 0 : nanos[nanos.length - 1];
  }

  /** The samples up to {@code to} that tell of the time since {@code from}: the one before too. */
  public Stretch between(long from, long to) {
    int begin = Math.max(0, inForce(from));
    int end = inForce(to) + 1;
    return end <= begin
        ? new Stretch(ends, new long[0], new int[0], new int[0])
        : new Stretch(
            ends,
            Arrays.copyOfRange(nanos, begin, end),
            Arrays.copyOfRange(touched, begin, end),
            Arrays.copyOfRange(known, begin, end));
  }

  /** The newest sample that is not later than a moment; -1 where all are. */
  public int inForce(long moment) {
    int at = Arrays.binarySearch(nanos, moment);
    if (at < 0) {
      return -at - 2;
    }
    while (at + 1 < nanos.length && nanos[at + 1] == moment) {
      at++;
    }
    return at;
  }

  /** Whether an end was triggered at a moment; empty where it was not known. */
  public Optional<Boolean> at(int end, long moment) {
    int sample = inForce(moment);
    return sample < 0 || !is(known, sample, end)
        ? Optional.empty()
        : Optional.of(is(touched, sample, end));
  }

  private static boolean is(int[] bits, int sample, int end) {
    return (bits[sample] >> end & 1) == 1;
  }

  /** Its strips, each with its changes and its bounce, in the order of the ends. */
  public List<Strip> strips() {
    List<Strip> strips = new ArrayList<>();
    for (int end = 0; end < ends.size(); end++) {
      strips.add(strip(end));
    }
    return List.copyOf(strips);
  }

  private Strip strip(int end) {
    StripRecorder recorder = null;
    for (int i = 0; i < nanos.length; i++) {
      if (!is(known, i, end)) {
        if (recorder != null) {
          recorder.blank(nanos[i]);
        }
        continue;
      }
      boolean on = is(touched, i, end);
      if (recorder == null) {
        recorder = new StripRecorder(ends.get(end), nanos[i], on);
      }
      recorder.add(nanos[i], on);
    }
    return recorder == null
        ? new StripRecorder(ends.get(end), Long.MAX_VALUE, false).strip()
        : recorder.strip();
  }

  /** All of it with the marks that were not put before it, as {@link TraceCsv} has it. */
  public String csv(List<Trace.Mark> marks) {
    List<Trace.Mark> within = marks.stream().filter(m -> m.nanos() >= first()).toList();
    return TraceCsv.of(isEmpty() ? List.of() : strips(), within, first(), last());
  }
}
