package dev.gantrywright.prove;

import dev.gantrywright.prove.Sample.Validity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The guided touch test. Fed with the samples of a watch, it asks for one endstop after the other
 * and goes on by itself when a press is over, so that nobody has to touch the computer.
 */
public final class TouchTest {
  /**
   * How patient it is.
   *
   * @param settleNanos all must be still for so long before a press begins or counts as over
   * @param giveUpNanos an endstop that shows nothing for so long after it was asked for never
   *     changes
   */
  public record Patience(long settleNanos, long giveUpNanos) {
    /** For a hand at the machine. */
    public static Patience standard() {
      return new Patience(300_000_000L, 20_000_000_000L);
    }
  }

  private enum Phase {
    REST,
    ASKING,
    PRESSED,
    DONE
  }

  private final List<String> ends;
  private final Map<String, Boolean> inverted;
  private final Patience patience;
  private final Map<String, Map<String, PressEffect>> matrix = new LinkedHashMap<>();
  private Phase phase = Phase.REST;
  private Map<String, Boolean> rest = Map.of();
  private PressWindow window;
  private int asking;
  private long start;
  private long since;
  private long previous;
  private long intervalSum;
  private long intervals;
  private boolean begun;

  /**
   * @param ends the fitted axis ends, in the order in which they are asked for
   * @param inverted what the profile says for each
   */
  public TouchTest(List<String> ends, Map<String, Boolean> inverted, Patience patience) {
    this.ends = List.copyOf(ends);
    this.inverted = new HashMap<>(inverted);
    this.patience = patience;
    if (ends.isEmpty()) {
      phase = Phase.DONE;
    }
  }

  /** The endstop to be pressed now; empty while hands must be off, and at the end. */
  public synchronized Optional<String> asked() {
    return phase == Phase.ASKING || phase == Phase.PRESSED
        ? Optional.of(ends.get(asking))
        : Optional.empty();
  }

  /** What to tell the user now. */
  public synchronized String prompt() {
    return switch (phase) {
      case REST -> "Hands off the machine for a moment";
      case ASKING -> "Press and hold " + ends.get(asking) + " for a second, then let go";
      case PRESSED -> "Seen: let go";
      case DONE -> "Done";
    };
  }

  public synchronized boolean done() {
    return phase == Phase.DONE;
  }

  /** True while a press has been seen and is not over. */
  public synchronized boolean pressed() {
    return phase == Phase.PRESSED;
  }

  /** Endstops done so far. */
  public synchronized int count() {
    return phase == Phase.DONE ? ends.size() : asking;
  }

  /** Takes the next sample. */
  public synchronized void add(Sample sample) {
    if (sample.validity() != Validity.VALID || phase == Phase.DONE) {
      return;
    }
    long now = sample.nanos();
    if (begun) {
      intervalSum += now - previous;
      intervals++;
    } else {
      begun = true;
      start = now;
      since = now;
    }
    previous = now;
    switch (phase) {
      case REST -> settle(sample, now);
      case ASKING -> awaitPress(sample, now);
      case PRESSED -> follow(sample, now);
      case DONE -> {}
    }
  }

  /** The endstop that is asked for cannot be pressed: it is left out. */
  public synchronized void skip() {
    if (phase == Phase.ASKING || phase == Phase.PRESSED) {
      next(previous);
    }
  }

  private void settle(Sample sample, long now) {
    if (!sample.states().equals(rest)) {
      rest = sample.states();
      since = now;
    }
    // One that is never still must not hold the others up.
    boolean tired = now - start >= patience.giveUpNanos();
    if (tired || now - since >= patience.settleNanos()) {
      phase = Phase.ASKING;
      since = now;
    }
  }

  private void awaitPress(Sample sample, long now) {
    if (!sample.states().equals(rest)) {
      window = new PressWindow(rest);
      window.add(sample);
      phase = Phase.PRESSED;
    } else if (now - since >= patience.giveUpNanos()) {
      matrix.put(ends.get(asking), Map.of());
      next(now);
    }
  }

  private void follow(Sample sample, long now) {
    window.add(sample);
    boolean over = window.quietNanos(now) >= patience.settleNanos();
    if (over || window.lengthNanos() >= patience.giveUpNanos()) {
      matrix.put(ends.get(asking), window.effects());
      if (!over) {
        // It never came back: what it reads now is how it rests.
        rest = sample.states();
      }
      next(now);
    }
  }

  private void next(long now) {
    asking++;
    since = now;
    window = null;
    phase = asking < ends.size() ? Phase.ASKING : Phase.DONE;
  }

  /** The verdicts so far; endstops that were not asked for yet are not tested. */
  public synchronized TouchReport report() {
    long interval = intervals == 0 ? 0 : intervalSum / intervals;
    return new TouchDecision(
            new ArrayList<>(ends), rest, new LinkedHashMap<>(matrix), inverted, interval)
        .report();
  }
}
