package dev.gantrywright.ui.state;

import dev.gantrywright.prove.Sample;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * What the machine says of its endstops. Samples come on the watch's thread; the view gets the
 * newest, and never more than one waits for it.
 */
final class SeenEndstops {
  private final Executor view;
  private final Cell<Live> live = new Cell<>(Live.nothing());
  private final AtomicReference<Sample> waiting = new AtomicReference<>();
  private final RateMeter rate = new RateMeter();
  private Trace trace = new Trace(List.of());
  private volatile Consumer<Sample> tap = sample -> {};

  SeenEndstops(Executor view) {
    this.view = view;
  }

  Cell<Live> live() {
    return live;
  }

  Trace trace() {
    return trace;
  }

  void tap(Consumer<Sample> receiver) {
    tap = receiver;
  }

  /**
   * A line is up: takes its samples from now on.
   *
   * @param ends those of the trace
   * @param current whether that line is still the one in hand, asked on the view's thread
   */
  Consumer<Sample> begin(List<String> ends, BooleanSupplier current) {
    trace = new Trace(ends);
    Trace into = trace;
    return sample -> sampled(into, current, sample);
  }

  /** On the watch's thread. */
  private void sampled(Trace into, BooleanSupplier current, Sample sample) {
    boolean fresh = sample.validity() == Sample.Validity.VALID;
    into.add(sample.nanos(), fresh ? sample.states() : Map.of());
    tap.accept(sample);
    if (waiting.getAndSet(sample) == null) {
      view.execute(
          () -> {
            Sample newest = waiting.getAndSet(null);
            if (newest != null && current.getAsBoolean()) {
              show(newest);
            }
          });
    }
  }

  private void show(Sample sample) {
    Map<String, ContactState> states = new LinkedHashMap<>();
    boolean fresh = sample.validity() == Sample.Validity.VALID;
    sample
        .states()
        .forEach((end, on) -> states.put(end, on ? ContactState.TRIGGERED : ContactState.OPEN));
    rate.count(sample.nanos(), trace.count());
    live.set(new Live(states, fresh, sample.latencyNanos() / 1e6, rate.hertz()));
  }

  /**
   * As they are known at this moment, by axis end: none where the machine does not answer, whatever
   * was seen last.
   *
   * @param up whether the line is
   */
  Map<String, ContactState> known(boolean up) {
    Map<String, ContactState> last = live.get().states();
    if (up && live.get().fresh()) {
      return last;
    }
    Map<String, ContactState> unknown = new LinkedHashMap<>();
    last.keySet().forEach(end -> unknown.put(end, ContactState.UNKNOWN));
    return unknown;
  }

  void forget() {
    live.set(Live.nothing());
  }
}
