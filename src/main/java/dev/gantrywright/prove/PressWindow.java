package dev.gantrywright.prove;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The samples of one press, and what each endstop did in it. */
final class PressWindow {
  /** Bounce is looked for this close to the beginning and end of a press. */
  private static final long EDGE_NANOS = 2 * Trace.BOUNCE_NANOS;

  private final Map<String, Boolean> rest;
  private final List<Sample> samples = new ArrayList<>();
  private long lastDifference;

  PressWindow(Map<String, Boolean> rest) {
    this.rest = rest;
  }

  void add(Sample sample) {
    samples.add(sample);
    if (!sample.states().equals(rest)) {
      lastDifference = sample.nanos();
    }
  }

  /** How long all has been as at rest. */
  long quietNanos(long now) {
    return now - lastDifference;
  }

  long lengthNanos() {
    return samples.isEmpty() ? 0 : samples.get(samples.size() - 1).nanos() - samples.get(0).nanos();
  }

  Map<String, PressEffect> effects() {
    Map<String, PressEffect> effects = new HashMap<>();
    rest.forEach((end, atRest) -> effects.put(end, effect(end, atRest)));
    return effects;
  }

  private PressEffect effect(String end, boolean atRest) {
    long start = samples.get(0).nanos();
    StripRecorder strip = new StripRecorder(end, start, atRest);
    boolean before = atRest;
    int changes = 0;
    int middle = 0;
    long different = 0;
    for (int i = 0; i < samples.size(); i++) {
      Sample sample = samples.get(i);
      boolean now = sample.states().getOrDefault(end, atRest);
      if (now != before) {
        changes++;
        boolean inside =
            sample.nanos() - start > EDGE_NANOS && lastDifference - sample.nanos() > EDGE_NANOS;
        middle += inside ? 1 : 0;
        before = now;
      }
      strip.add(sample.nanos(), now);
      if (now != atRest && i + 1 < samples.size()) {
        different += samples.get(i + 1).nanos() - sample.nanos();
      }
    }
    long press = Math.max(1, lastDifference - start);
    boolean held = changes > 0 && different * 2 >= press && middle < 3;
    return new PressEffect(held, changes, middle, strip.strip().longestBounceNanos());
  }
}
