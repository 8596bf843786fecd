package dev.gantrywright.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.Trace;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TracePainterTest {
  private static final int WIDTH = 100;
  private static final int HEIGHT = 40;
  private static final TracePainter.Ink INK =
      new TracePainter.Ink(0xff000000, 0xff000001, 0xff000002, 0xff000003, 0xff000004);

  /** None within the picture. */
  private static final TracePainter.Rule RULE =
      new TracePainter.Rule(1_000_000_000L, 5_000_000_000L, 5_000_000_000L);

  private final int[] pixels = new int[WIDTH * HEIGHT];
  private final Trace trace = new Trace(List.of("xMin", "yMin"));

  private void paint(int wrong) {
    new TracePainter(pixels, WIDTH, HEIGHT).paint(trace.since(0), 2, 0, 1000, RULE, wrong, INK);
  }

  private int at(int x, int y) {
    return pixels[y * WIDTH + x];
  }

  private List<Integer> rowsOf(int x, int colour) {
    return IntStream.range(0, HEIGHT).filter(y -> at(x, y) == colour).boxed().toList();
  }

  @Test
  void openRunsLowAndTriggeredRunsHigh() {
    trace.add(0, Map.of("xMin", false, "yMin", true));
    paint(0);
    assertThat(rowsOf(50, 0xff000002)).containsExactly(14, 15, 25, 26);
  }

  @Test
  void aChangeIsAnUprightLine() {
    trace.add(0, Map.of("xMin", false));
    trace.add(500, Map.of("xMin", true));
    paint(0);
    assertThat(rowsOf(50, 0xff000002)).contains(5, 10, 15);
    assertThat(rowsOf(20, 0xff000002)).containsExactly(14, 15);
    assertThat(rowsOf(80, 0xff000002)).containsExactly(5, 6);
  }

  @Test
  void whatIsNotKnownLeavesAGap() {
    trace.add(0, Map.of("xMin", false));
    trace.add(300, Map.of());
    trace.add(600, Map.of("xMin", false));
    paint(0);
    assertThat(rowsOf(45, 0xff000002)).isEmpty();
    assertThat(rowsOf(10, 0xff000002)).isNotEmpty();
    assertThat(rowsOf(70, 0xff000002)).isNotEmpty();
  }

  @Test
  void anEndThatDisagreesHasItsOwnTone() {
    trace.add(0, Map.of("xMin", true, "yMin", false));
    paint(0b01);
    assertThat(rowsOf(50, 0xff000004)).containsExactly(5, 6);
  }

  @Test
  void samplesOutsideTheStretchDoNotHurt() {
    trace.add(-5_000_000_000L, Map.of("xMin", true));
    trace.add(5_000_000_000L, Map.of("xMin", false));
    paint(0);
    assertThat(rowsOf(50, 0xff000002)).containsExactly(5, 6);
  }
}
