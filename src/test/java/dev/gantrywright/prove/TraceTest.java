package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.prove.Sample.Validity;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TraceTest {
  private static final long MS = 1_000_000L;
  private final Trace trace = new Trace();

  private void at(long ms, boolean x, boolean y) {
    trace.add(new Sample(ms * MS, 0, Validity.VALID, Map.of("xMin", x, "yMin", y)));
  }

  private Strip strip(String end) {
    return trace.strips().stream().filter(s -> s.end().equals(end)).findFirst().orElseThrow();
  }

  @Test
  void keepsTransitionsNotSamples() {
    at(0, false, true);
    at(10, false, true);
    at(20, true, true);
    at(400, false, true);
    assertThat(strip("xMin").transitions())
        .containsExactly(new Transition(20 * MS, true), new Transition(400 * MS, false));
    assertThat(strip("yMin").transitions()).isEmpty();
    assertThat(strip("yMin").triggered()).isTrue();
    assertThat(strip("xMin").triggeredAt(5 * MS)).isFalse();
    assertThat(strip("xMin").triggeredAt(20 * MS)).isTrue();
    assertThat(strip("xMin").triggeredAt(399 * MS)).isTrue();
    assertThat(strip("xMin").triggeredAt(400 * MS)).isFalse();
    assertThat(trace.samples()).isEqualTo(4);
    assertThat(trace.seconds()).isEqualTo(0.4);
  }

  @Test
  void countsBounceAndItsLongestRun() {
    at(0, false, false);
    at(100, true, false);
    at(110, false, false);
    at(125, true, false);
    // 75 ms later: a change of its own.
    at(200, false, false);
    Strip x = strip("xMin");
    assertThat(x.chatter()).isEqualTo(2);
    assertThat(x.longestBounceNanos()).isEqualTo(25 * MS);
    assertThat(x.transitions()).hasSize(4);
  }

  @Test
  void gapsAreTimesWithoutNews() {
    at(0, false, false);
    trace.add(new Sample(50 * MS, 0, Validity.STALE, Map.of()));
    trace.add(new Sample(90 * MS, 0, Validity.DISCONNECTED, Map.of()));
    assertThat(trace.gaps())
        .containsExactly(new Trace.Gap(50 * MS, 90 * MS, Validity.DISCONNECTED));
    at(120, false, false);
    assertThat(trace.gaps())
        .containsExactly(new Trace.Gap(50 * MS, 120 * MS, Validity.DISCONNECTED));
  }

  @Test
  void writesCsv() {
    at(1000, false, true);
    at(1500, true, true);
    trace.mark(1600 * MS, "plug \"X\", pulled");
    at(2000, true, false);
    List<String> rows = trace.csv().lines().toList();
    assertThat(rows.get(0)).contains("xMin").contains("yMin").endsWith(",mark");
    boolean xFirst = rows.get(0).startsWith("seconds,xMin");
    assertThat(rows.get(1))
        .isEqualTo("0.000000," + (xFirst ? "open,triggered," : "triggered,open,"));
    assertThat(rows)
        .anyMatch(r -> r.startsWith("0.600000") && r.endsWith("\"plug \"\"X\"\", pulled\""));
    assertThat(rows).hasSize(5);
  }

  @Test
  void isBoundedAndCanBeginAnew() {
    for (int i = 0; i <= Trace.LONGEST_STRIP + 10; i++) {
      at(i * 100L, i % 2 == 1, false);
    }
    assertThat(strip("xMin").transitions()).hasSize(Trace.LONGEST_STRIP);
    trace.clear();
    assertThat(trace.strips()).isEmpty();
    assertThat(trace.samples()).isZero();
  }

  @Property(tries = 500)
  void theStripSaysWhatTheSamplesSaid(@ForAll @Size(min = 1, max = 60) boolean[] states) {
    Trace any = new Trace();
    for (int i = 0; i < states.length; i++) {
      any.add(new Sample(i * 7 * MS, 0, Validity.VALID, Map.of("xMin", states[i])));
    }
    Strip strip = any.strips().get(0);
    for (int i = 0; i < states.length; i++) {
      assertThat(strip.triggeredAt(i * 7 * MS)).isEqualTo(states[i]);
    }
    assertThat(strip.chatter()).isLessThanOrEqualTo(strip.transitions().size());
  }
}
