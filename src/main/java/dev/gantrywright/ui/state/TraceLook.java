package dev.gantrywright.ui.state;

import dev.gantrywright.app.History;
import dev.gantrywright.prove.Stretch;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * What of the trace is looked at: how long a stretch, up to now or held at a moment, and the user's
 * marks. Lives on the view's thread; samples go on being kept while it is held.
 */
public final class TraceLook {
  /** Stretches that can be looked at, seconds. */
  public static final List<Integer> SPANS = List.of(2, 5, 20, 60, 300);

  private static final int USUAL = 20;
  private static final long SECOND = 1_000_000_000L;
  private static final DateTimeFormatter FINE = DateTimeFormatter.ofPattern("HH:mm:ss.SSS");
  private static final DateTimeFormatter WHOLE = DateTimeFormatter.ofPattern("HH:mm:ss");

  /**
   * A picture that stands still.
   *
   * @param kept all that was kept when it was held
   * @param at when it was held
   * @param right its right edge
   */
  public record Held(Stretch kept, long at, long right) {}

  private final Supplier<Trace> live;
  private final LongSupplier nanoTime;
  private final Clock clock;
  private final long epochNanos;
  private final Cell<Integer> span = new Cell<>(USUAL);
  private final Cell<Optional<Held>> held = new Cell<>(Optional.empty());
  private final Cell<OptionalLong> cursor = new Cell<>(OptionalLong.empty());
  private final Cell<History<List<TraceMark>>> marks = new Cell<>(History.of(List.of()));
  private Trace followed;

  /**
   * @param live the trace of the line in hand
   * @param nanoTime the clock of its samples
   * @param clock tells the time of day
   */
  public TraceLook(Supplier<Trace> live, LongSupplier nanoTime, Clock clock) {
    this.live = live;
    this.nanoTime = nanoTime;
    this.clock = clock;
    Instant now = clock.instant();
    epochNanos = now.getEpochSecond() * SECOND + now.getNano() - nanoTime.getAsLong();
  }

  /** Seconds that the picture shows. */
  public Cell<Integer> span() {
    return span;
  }

  public Cell<Optional<Held>> held() {
    return held;
  }

  /** The moment that the keys point at; empty where they point at none. */
  public Cell<OptionalLong> cursor() {
    return cursor;
  }

  public Cell<History<List<TraceMark>>> marks() {
    return marks;
  }

  /** The trace of the line in hand; with another line the look begins anew. */
  public Trace trace() {
    Trace now = live.get();
    if (now != followed) {
      followed = now;
      cursor.set(OptionalLong.empty());
      held.set(Optional.empty());
      marks.set(History.of(List.of()));
    }
    return now;
  }

  public long now() {
    return nanoTime.getAsLong();
  }

  public long spanNanos() {
    return span.get() * SECOND;
  }

  /** The right edge of the picture. */
  public long right() {
    return held.get().map(Held::right).orElseGet(this::now);
  }

  /** What the picture shows, with the sample before it. */
  public Stretch shown() {
    long right = right();
    return held.get()
        .map(still -> still.kept().between(right - spanNanos(), right))
        .orElseGet(() -> trace().since(right - spanNanos()));
  }

  /** All that can be looked at: what was kept when the picture was held, or is now. */
  public Stretch all() {
    return held.get().map(Held::kept).orElseGet(() -> trace().all());
  }

  /** The oldest moment that can be looked at. */
  public long oldest() {
    return held.get().map(still -> still.kept().first()).orElseGet(() -> trace().oldest());
  }

  /** Holds the picture as it is; does nothing where it is held. */
  public void hold() {
    holdAt(now());
  }

  /** Holds it at the last sample: nothing more comes. */
  public void rest() {
    holdAt(trace().all().last());
  }

  private void holdAt(long moment) {
    if (held.get().isEmpty() && trace().count() > 0) {
      held.set(Optional.of(new Held(trace().all(), moment, moment)));
    }
  }

  /** Shows what comes again. */
  public void goOn() {
    cursor.set(OptionalLong.empty());
    held.set(Optional.empty());
  }

  public void holdOrGoOn() {
    if (held.get().isPresent()) {
      goOn();
    } else {
      hold();
    }
  }

  /** Moves the held picture so that it ends at a moment, as far as samples were kept. */
  public void to(long right) {
    hold();
    held.get()
        .ifPresent(
            still -> {
              long least = Math.min(still.at(), still.kept().first() + spanNanos());
              long most = still.at();
              held.set(
                  Optional.of(
                      new Held(still.kept(), most, Math.max(least, Math.min(most, right)))));
            });
  }

  /** Holds the picture and points the keys at a moment; the picture follows where it must. */
  public void point(long moment) {
    hold();
    held.get()
        .ifPresent(
            still -> {
              long at = Math.max(still.kept().first(), Math.min(still.at(), moment));
              cursor.set(OptionalLong.of(at));
              if (at > right()) {
                to(at);
              } else if (at < right() - spanNanos()) {
                to(at + spanNanos());
              }
            });
  }

  /** Shows a moment in the middle of the held picture. */
  public void show(long moment) {
    to(moment + spanNanos() / 2);
    point(moment);
  }

  /** Shows so many seconds; where the picture is held, this moment of it keeps its place. */
  public void span(int seconds, long anchor) {
    double place = (right() - anchor) / (double) spanNanos();
    span.set(seconds);
    if (held.get().isPresent()) {
      to(anchor + Math.round(place * spanNanos()));
    }
  }

  /** The next shorter or longer stretch; the same at the end of the row. */
  public void zoom(int steps, long anchor) {
    int at = SPANS.indexOf(span.get()) + steps;
    span(SPANS.get(Math.max(0, Math.min(SPANS.size() - 1, at))), anchor);
  }

  /** What keeps its place when keys change the span. */
  public long anchor() {
    return cursor.get().orElse(right() - spanNanos() / 2);
  }

  /**
   * Puts a mark where the keys point, at the end of a held picture, or now; nowhere while nothing
   * was seen.
   */
  public Optional<TraceMark> mark() {
    if (trace().count() == 0) {
      return Optional.empty();
    }
    int number = 1 + list().stream().mapToInt(TraceMark::number).max().orElse(0);
    TraceMark mark = new TraceMark(number, cursor.get().orElse(right()), "");
    List<TraceMark> more = new ArrayList<>(list());
    more.add(mark);
    edit(Texts.of("trace.mark.put", number), "", more);
    return Optional.of(mark);
  }

  /** Gives a mark other words; typing is one step to undo. */
  public void name(int number, String words) {
    edit(
        Texts.of("trace.mark.named", number),
        "mark " + number,
        list().stream().map(m -> m.number() == number ? m.named(words) : m).toList());
  }

  public void remove(int number) {
    edit(
        Texts.of("trace.mark.removed", number),
        "",
        list().stream().filter(m -> m.number() != number).toList());
  }

  /** The marks, in the order in which they were put. */
  public List<TraceMark> list() {
    return marks.get().present();
  }

  private void edit(String label, String key, List<TraceMark> next) {
    marks.update(now -> now.edit(label, key, List.copyOf(next), clock.instant()));
  }

  /** Nanoseconds since 1970 less those of the monotonic clock. */
  public long epochNanos() {
    return epochNanos;
  }

  /** Time of day to the millisecond. */
  public String time(long nanos) {
    return FINE.format(timeOfDay(nanos));
  }

  /** Time of day to the second, or a tenth of it where that says more. */
  public String shortTime(long nanos) {
    LocalTime time = timeOfDay(nanos + 500_000L);
    int tenth = time.getNano() / 100_000_000;
    return WHOLE.format(time) + (tenth == 0 ? "" : "." + tenth);
  }

  private LocalTime timeOfDay(long nanos) {
    long epoch = nanos + epochNanos;
    Instant at = Instant.ofEpochSecond(Math.floorDiv(epoch, SECOND), Math.floorMod(epoch, SECOND));
    return LocalTime.ofInstant(at, clock.getZone());
  }
}
