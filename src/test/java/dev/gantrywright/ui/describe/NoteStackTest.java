package dev.gantrywright.ui.describe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class NoteStackTest {
  @Test
  void aNoteAloneStandsLevelWithItsField() {
    assertThat(NoteStack.place(new double[] {120}, new double[] {60}, 8, 0)).containsExactly(120);
  }

  @Test
  void notesWithRoomBetweenThemDoNotMove() {
    assertThat(NoteStack.place(new double[] {10, 200}, new double[] {60, 60}, 8, 0))
        .containsExactly(10, 200);
  }

  @Test
  void twoThatMeetShareTheMove() {
    assertThat(NoteStack.place(new double[] {100, 100}, new double[] {60, 60}, 8, 0))
        .containsExactly(66, 134);
  }

  @Test
  void noneStandsAboveTheTop() {
    assertThat(NoteStack.place(new double[] {5, 5}, new double[] {60, 60}, 8, 12))
        .containsExactly(12, 80);
  }

  @Test
  void nothingToPlaceIsFine() {
    assertThat(NoteStack.place(new double[0], new double[0], 8, 0)).isEmpty();
  }

  /** Apart by the gap, in order, below the top: whatever is asked for. */
  @Property(tries = 500)
  void neverOverlap(
      @ForAll @Size(max = 25) List<@DoubleRange(max = 900) Double> wants,
      @ForAll @DoubleRange(min = 10, max = 150) double height) {
    double[] wanted = wants.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double[] heights = new double[wanted.length];
    Arrays.fill(heights, height);
    double[] places = NoteStack.place(wanted, heights, 8, 16);
    for (int i = 0; i < places.length; i++) {
      assertThat(places[i]).isGreaterThanOrEqualTo(16);
      if (i > 0) {
        assertThat(places[i] - places[i - 1]).isGreaterThanOrEqualTo(height + 8 - 1e-6);
      }
    }
  }

  /** Asking again for the places that were given changes nothing. */
  @Property(tries = 200)
  void placesAreStable(@ForAll @Size(max = 15) List<@DoubleRange(max = 900) Double> wants) {
    double[] wanted = wants.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    double[] heights = new double[wanted.length];
    Arrays.fill(heights, 40);
    double[] once = NoteStack.place(wanted, heights, 8, 0);
    double[] twice = NoteStack.place(once, heights, 8, 0);
    for (int i = 0; i < once.length; i++) {
      assertThat(twice[i]).isCloseTo(once[i], within(1e-6));
    }
  }
}
