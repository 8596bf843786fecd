package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.prove.Sample.Validity;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class StretchTest {
  private static final long MS = 1_000_000L;
  private static final List<String> ENDS = List.of("xMin", "yMin");

  /** A bit each: triggered or not; both known. */
  private static Stretch of(long[] ms, int[] touched, int[] known) {
    long[] nanos = java.util.Arrays.stream(ms).map(each -> each * MS).toArray();
    return new Stretch(ENDS, nanos, touched, known);
  }

  @Test
  void countsWhatTheLiveTraceCounts() {
    Stretch stretch =
        of(
            new long[] {0, 100, 110, 125, 200},
            new int[] {0, 1, 0, 1, 0},
            new int[] {3, 3, 3, 3, 3});
    Strip x = stretch.strips().get(0);
    assertThat(x.transitions()).hasSize(4);
    assertThat(x.chatter()).isEqualTo(2);
    assertThat(x.longestBounceNanos()).isEqualTo(25 * MS);
    assertThat(stretch.strips().get(1).transitions()).isEmpty();
  }

  @Test
  void aPartOfItBeginsWithTheSampleInForce() {
    Stretch stretch =
        of(new long[] {0, 100, 200, 300}, new int[] {0, 1, 0, 1}, new int[] {3, 3, 3, 3});
    assertThat(stretch.between(150 * MS, 250 * MS).nanos()).containsExactly(100 * MS, 200 * MS);
    assertThat(stretch.between(-50 * MS, 0).nanos()).containsExactly(0);
    assertThat(stretch.between(-50 * MS, -10 * MS).isEmpty()).isTrue();
    assertThat(stretch.between(900 * MS, 950 * MS).nanos()).containsExactly(300 * MS);
    assertThat(stretch.at(0, 150 * MS)).contains(true);
    assertThat(stretch.at(1, 150 * MS)).contains(false);
    assertThat(stretch.at(0, -1)).isEmpty();
  }

  @Test
  void theTableSaysWhatWasNotKnown() {
    Stretch stretch =
        of(
            new long[] {0, 100, 200, 300, 400},
            new int[] {0, 1, 0, 3, 3},
            new int[] {1, 1, 0, 3, 3});
    assertThat(stretch.csv(List.of(new Trace.Mark(150 * MS, "pressed"))).lines())
        .containsExactly(
            "seconds,xMin,yMin,mark",
            "0.000000,open,unknown,",
            "0.100000,triggered,unknown,",
            "0.150000,triggered,unknown,pressed",
            "0.200000,unknown,unknown,",
            "0.300000,triggered,triggered,",
            "0.400000,triggered,triggered,");
  }

  @Test
  void anEmptyOneHasOnlyItsHeading() {
    assertThat(of(new long[0], new int[0], new int[0]).csv(List.of())).isEqualTo("seconds,mark\n");
  }

  @Property(tries = 300)
  void theTableIsTheOneOfTheLiveTrace(
      @ForAll @Size(min = 1, max = 40) List<@IntRange(max = 8) Integer> states) {
    long[] ms = new long[states.size()];
    int[] touched = new int[ms.length];
    int[] known = new int[ms.length];
    Trace live = new Trace();
    for (int i = 0; i < ms.length; i++) {
      // The first sample names both, so that the live trace has both columns in this order.
      int state = i == 0 ? states.get(i) % 4 : states.get(i);
      ms[i] = 30L * i;
      known[i] = state == 8 ? 0 : state >= 4 ? 1 : 3;
      touched[i] = state & known[i];
      Map<String, Boolean> names = new java.util.LinkedHashMap<>();
      for (int end = 0; end < 2; end++) {
        if ((known[i] >> end & 1) == 1) {
          names.put(ENDS.get(end), (touched[i] >> end & 1) == 1);
        }
      }
      Validity validity = known[i] == 0 ? Validity.STALE : Validity.VALID;
      live.add(new Sample(ms[i] * MS, 0, validity, names));
    }
    live.mark(45 * MS, "here");
    Stretch stretch = of(ms, touched, known);
    assertThat(stretch.csv(List.of(new Trace.Mark(45 * MS, "here")))).isEqualTo(live.csv());
    assertThat(stretch.strips()).isEqualTo(live.strips());
  }
}
