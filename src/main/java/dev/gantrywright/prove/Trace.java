package dev.gantrywright.prove;

import dev.gantrywright.prove.Sample.Validity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The endstops over time: a strip for each, chatter, gaps and the user's marks. Bounded: of each
 * strip the newest changes are kept. Safe for several threads.
 */
public final class Trace {
  /**
   * Changes closer together than this are one run of bounce. A hand cannot press and let go faster
   * (common practice, no published source).
   */
  public static final long BOUNCE_NANOS = 50_000_000L;

  /** Newest changes kept of each strip. */
  public static final int LONGEST_STRIP = 50_000;

  /**
   * The user's mark.
   *
   * @param nanos on the monotonic clock
   */
  public record Mark(long nanos, String text) {}

  /**
   * A time without news.
   *
   * @param until when samples were live again; the last sample so far while it lasts
   */
  public record Gap(long from, long until, Validity why) {}

  private final Map<String, StripRecorder> strips = new LinkedHashMap<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Gap> gaps = new ArrayList<>();
  private long first;
  private long last;
  private long samples;
  private Gap open;

  /** Takes the next sample, later than all before. */
  public synchronized void add(Sample sample) {
    if (samples == 0) {
      first = sample.nanos();
    }
    samples++;
    last = sample.nanos();
    if (sample.validity() != Validity.VALID) {
      open =
          new Gap(open == null ? sample.nanos() : open.from(), sample.nanos(), sample.validity());
      strips.values().forEach(strip -> strip.blank(sample.nanos()));
      return;
    }
    if (open != null) {
      gaps.add(new Gap(open.from(), sample.nanos(), open.why()));
      open = null;
    }
    strips.forEach(
        (end, strip) -> {
          if (!sample.states().containsKey(end)) {
            strip.blank(sample.nanos());
          }
        });
    sample
        .states()
        .forEach(
            (end, triggered) ->
                strips
                    .computeIfAbsent(end, e -> new StripRecorder(e, sample.nanos(), triggered))
                    .add(sample.nanos(), triggered));
  }

  public synchronized void mark(long nanos, String text) {
    marks.add(new Mark(nanos, text));
  }

  /** Begins anew; marks and gaps go too. */
  public synchronized void clear() {
    strips.clear();
    marks.clear();
    gaps.clear();
    open = null;
    samples = 0;
  }

  /** The strips as they stand, in the order in which endstops were first seen. */
  public synchronized List<Strip> strips() {
    return strips.values().stream().map(StripRecorder::strip).toList();
  }

  public synchronized List<Mark> marks() {
    return List.copyOf(marks);
  }

  public synchronized List<Gap> gaps() {
    List<Gap> all = new ArrayList<>(gaps);
    if (open != null) {
      all.add(open);
    }
    return List.copyOf(all);
  }

  public synchronized long samples() {
    return samples;
  }

  /** Seconds from the first sample to the last. */
  public synchronized double seconds() {
    return samples == 0 ? 0 : (last - first) / 1e9;
  }

  /** When the first sample came; 0 before there is one. */
  public synchronized long firstNanos() {
    return samples == 0 ? 0 : first;
  }

  public synchronized long lastNanos() {
    return samples == 0 ? 0 : last;
  }

  /** The strips and marks as {@link TraceCsv} has them; only its heading before a sample came. */
  public synchronized String csv() {
    return TraceCsv.of(strips(), marks, firstNanos(), lastNanos());
  }
}
