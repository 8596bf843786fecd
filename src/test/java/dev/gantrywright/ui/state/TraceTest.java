package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.prove.Stretch;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TraceTest {
  private final Trace trace = new Trace(List.of("xMin", "yMin"));

  @Test
  void keepsStatesAsBitsInTheOrderOfItsEnds() {
    trace.add(10, Map.of("xMin", true, "yMin", false));
    trace.add(20, Map.of("yMin", true));
    Stretch all = trace.since(0);
    assertThat(all.nanos()).containsExactly(10, 20);
    assertThat(all.touched()).containsExactly(0b01, 0b10);
    assertThat(all.known()).containsExactly(0b11, 0b10);
  }

  @Test
  void givesTheSampleBeforeTheStretchSoThatTheLineReachesItsEdge() {
    for (int i = 0; i < 10; i++) {
      trace.add(i * 10L, Map.of("xMin", i % 2 == 0));
    }
    assertThat(trace.since(55).nanos()).containsExactly(50, 60, 70, 80, 90);
    assertThat(trace.since(1000).nanos()).containsExactly(90);
  }

  @Test
  void theOldestFallOutWhenItIsFull() {
    for (int i = 0; i < Trace.CAPACITY + 5; i++) {
      trace.add(i, Map.of());
    }
    Stretch all = trace.since(Long.MIN_VALUE);
    assertThat(all.nanos()).hasSize(Trace.CAPACITY).startsWith(5).endsWith(Trace.CAPACITY + 4);
    assertThat(trace.count()).isEqualTo(Trace.CAPACITY + 5);
  }

  @Test
  void anEmptyTraceIsEmpty() {
    assertThat(trace.since(0).nanos()).isEmpty();
  }

  @Test
  void namesThatItDoesNotTraceAreLeftOut() {
    trace.add(1, Map.of("other", true));
    assertThat(trace.since(0).known()).containsExactly(0);
  }
}
