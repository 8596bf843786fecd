package dev.gantrywright.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.prove.Stretch;
import dev.gantrywright.ui.state.Trace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** The picture and the table are of the same trace: they agree on every state and every change. */
class TracePictureTest {
  private static final long MS = 1_000_000L;
  private static final int STEP = 10;
  private static final int HEIGHT = 40;
  private static final int LINE = 0xff000002;
  private static final int HIGH = 5;
  private static final int MIDDLE = 10;
  private static final int LOW = 14;
  private static final List<String> ENDS = List.of("xMin", "yMin");

  private int[] pixels;
  private int width;

  @Property(tries = 200)
  void thePictureSaysWhatTheTableSays(
      @ForAll @Size(min = 2, max = 60) List<@IntRange(max = 8) Integer> states) {
    Trace trace = new Trace(ENDS);
    for (int i = 0; i < states.size(); i++) {
      trace.add(i * STEP * MS, sample(states.get(i)));
    }
    paint(trace.all(), states.size() * STEP);
    List<String[]> rows = new ArrayList<>();
    trace.all().csv(List.of()).lines().skip(1).forEach(line -> rows.add(line.split(",", -1)));
    for (int end = 0; end < ENDS.size(); end++) {
      for (int i = 0; i < states.size(); i++) {
        assertThat(painted(end, i * STEP + STEP / 2)).isEqualTo(said(rows, end, i));
      }
      assertThat(uprights(end)).isEqualTo(changes(rows, end));
    }
  }

  /** 0 to 3 both known, 4 to 7 the first alone, 8 none. */
  private static Map<String, Boolean> sample(int state) {
    Map<String, Boolean> sample = new LinkedHashMap<>();
    if (state < 8) {
      sample.put("xMin", (state & 1) == 1);
    }
    if (state < 4) {
      sample.put("yMin", (state & 2) == 2);
    }
    return sample;
  }

  private void paint(Stretch all, int milliseconds) {
    width = milliseconds;
    pixels = new int[width * HEIGHT];
    long day = 86_400_000L * MS;
    new TracePainter(pixels, width, HEIGHT)
        .paint(
            all,
            2,
            0,
            milliseconds * MS,
            new TracePainter.Rule(MS, day, day),
            0,
            new TracePainter.Ink(0xff000000, 0xff000001, LINE, 0xff000003, 0xff000004));
  }

  private boolean line(int end, int x, int y) {
    return pixels[(end * HEIGHT / 2 + y) * width + x] == LINE;
  }

  private String painted(int end, int x) {
    boolean high = line(end, x, HIGH);
    boolean low = line(end, x, LOW);
    return high ? "triggered" : low ? "open" : "unknown";
  }

  private List<Integer> uprights(int end) {
    List<Integer> found = new ArrayList<>();
    for (int x = 0; x < width; x++) {
      if (line(end, x, MIDDLE) && (x == 0 || !line(end, x - 1, MIDDLE))) {
        found.add(x);
      }
    }
    return found;
  }

  private static String said(List<String[]> rows, int end, int sample) {
    String word = "unknown";
    for (String[] row : rows) {
      if (at(rows, row) <= sample * STEP) {
        word = row[end + 1];
      }
    }
    return word;
  }

  /** The table counts from its first sample, which is that of the picture. */
  private static long at(List<String[]> rows, String[] row) {
    return Math.round(Double.parseDouble(row[0]) * 1000);
  }

  private static List<Integer> changes(List<String[]> rows, int end) {
    List<Integer> found = new ArrayList<>();
    for (int i = 1; i < rows.size(); i++) {
      String before = rows.get(i - 1)[end + 1];
      String now = rows.get(i)[end + 1];
      if (!before.equals("unknown") && !now.equals("unknown") && !now.equals(before)) {
        found.add((int) at(rows, rows.get(i)));
      }
    }
    return found;
  }
}
