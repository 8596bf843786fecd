package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class TraceLookTest {
  private static final long SECOND = 1_000_000_000L;

  private Trace trace = new Trace(List.of("xMin"));
  private long now;
  private final TraceLook look =
      new TraceLook(
          () -> trace,
          () -> now,
          Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC));

  /** A sample a tenth of a second, changing once a second. */
  private void run(int seconds) {
    for (int i = 0; i < seconds * 10; i++) {
      now += SECOND / 10;
      trace.add(now, Map.of("xMin", now / SECOND % 2 == 1));
    }
  }

  @Test
  void runsWithTheClockUntilItIsHeldAndGoesOnFromNow() {
    run(30);
    assertThat(look.right()).isEqualTo(30 * SECOND);
    assertThat(look.shown().last() - look.shown().first()).isEqualTo(20 * SECOND + SECOND / 10);
    look.hold();
    run(10);
    assertThat(look.right()).isEqualTo(30 * SECOND);
    assertThat(look.all().last()).isEqualTo(30 * SECOND);
    look.goOn();
    assertThat(look.right()).isEqualTo(40 * SECOND);
    assertThat(look.all().last()).isEqualTo(40 * SECOND);
  }

  @Test
  void looksBackAsFarAsSamplesWereKeptAndNoFurther() {
    run(60);
    look.to(45 * SECOND);
    assertThat(look.right()).isEqualTo(45 * SECOND);
    look.to(-100 * SECOND);
    assertThat(look.right()).isEqualTo(look.all().first() + 20 * SECOND);
    look.to(1000 * SECOND);
    assertThat(look.right()).isEqualTo(60 * SECOND);
  }

  @Test
  void thePictureFollowsTheMomentThatIsPointedAt() {
    run(60);
    look.point(10 * SECOND);
    assertThat(look.right()).isEqualTo(30 * SECOND);
    look.point(50 * SECOND);
    assertThat(look.right()).isEqualTo(50 * SECOND);
    look.point(Long.MAX_VALUE);
    assertThat(look.cursor().get()).isEqualTo(OptionalLong.of(60 * SECOND));
    look.point(Long.MIN_VALUE);
    assertThat(look.cursor().get()).isEqualTo(OptionalLong.of(SECOND / 10));
  }

  @Test
  void aMomentKeepsItsPlaceWhereTheSpanChanges() {
    run(100);
    look.to(80 * SECOND);
    look.span(2, 75 * SECOND);
    // A quarter from the right before and after.
    assertThat(look.right()).isEqualTo(75 * SECOND + SECOND / 2);
    look.zoom(-1, 75 * SECOND);
    assertThat(look.span().get()).isEqualTo(2);
    look.zoom(99, look.anchor());
    assertThat(look.span().get()).isEqualTo(300);
    assertThat(look.right()).isEqualTo(100 * SECOND);
  }

  @Test
  void marksArePutWhereOnePointsElseNowAndUndoneByName() {
    assertThat(look.mark()).isEmpty();
    run(30);
    assertThat(look.mark().orElseThrow().nanos()).isEqualTo(30 * SECOND);
    look.point(20 * SECOND);
    assertThat(look.mark().orElseThrow()).isEqualTo(new TraceMark(2, 20 * SECOND, ""));
    look.name(2, "plug");
    assertThat(look.marks().get().undoLabel()).contains("words of mark 2");
    look.remove(1);
    assertThat(look.list()).containsExactly(new TraceMark(2, 20 * SECOND, "plug"));
    look.marks().update(history -> history.undo());
    assertThat(look.list()).extracting(TraceMark::number).containsExactly(1, 2);
  }

  @Test
  void aNewLineBeginsANewLook() {
    run(30);
    look.mark();
    look.hold();
    trace = new Trace(List.of("yMin"));
    assertThat(look.trace()).isSameAs(trace);
    assertThat(look.held().get()).isEmpty();
    assertThat(look.list()).isEmpty();
    assertThat(look.marks().get().undoLabel()).isEmpty();
  }

  @Test
  void saysTheTimeOfDay() {
    assertThat(look.time(1_234 * SECOND / 1000)).isEqualTo("12:00:01.234");
    assertThat(look.shortTime(2 * SECOND)).isEqualTo("12:00:02");
    assertThat(look.shortTime(2_500 * SECOND / 1000)).isEqualTo("12:00:02.5");
  }

  @Test
  void tellsChangesBounceAndWhatItWasAtAMoment() {
    trace.add(0, Map.of("xMin", false));
    trace.add(SECOND, Map.of("xMin", true));
    trace.add(SECOND + 3_000_000L, Map.of("xMin", false));
    trace.add(SECOND + 4_500_000L, Map.of("xMin", true));
    trace.add(2 * SECOND, Map.of());
    now = 3 * SECOND;
    TraceWords words = new TraceWords(look);
    TraceWords.Told told = words.strips(look.shown()).get(0);
    assertThat(told.changes()).isEqualTo("3 changes");
    assertThat(told.bounce()).isEqualTo("2 bounces, up to 4.5 ms");
    assertThat(told.told())
        .isEqualTo(
            "x min: open at first, 3 changes, 2 bounces, up to 4.5 ms. 12:00:01.000 triggered,"
                + " 12:00:01.003 open, 12:00:01.004 triggered.");
    assertThat(words.at(look.shown(), SECOND / 2)).isEqualTo("12:00:00.500  x min open");
    assertThat(words.at(look.shown(), 5 * SECOND / 2)).isEqualTo("12:00:02.500  x min not known");
    assertThat(words.at(look.shown(), -SECOND)).startsWith("11:59:59.000: nothing is kept");
  }
}
