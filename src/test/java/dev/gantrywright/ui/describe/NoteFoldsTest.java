package dev.gantrywright.ui.describe;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class NoteFoldsTest {
  private static final int KEEP = 3;

  private static boolean[] fold(double[] wanted, double height, int... ranks) {
    double[] whole = new double[wanted.length];
    java.util.Arrays.fill(whole, height);
    return NoteFolds.of(wanted, whole, 30, ranks, KEEP, 8, 16, 700);
  }

  @Test
  void notesWithRoomStayWhole() {
    assertThat(fold(new double[] {40, 220, 420}, 120, 2, 1, 0)).containsOnly(false);
  }

  @Test
  void aCrowdFoldsTheLeastGraveFirst() {
    boolean[] folded = fold(new double[] {100, 136, 172, 208}, 200, 2, 0, 1, 0);
    assertThat(folded[0]).as("the error").isFalse();
    assertThat(folded[1]).isTrue();
    assertThat(folded[3]).isTrue();
  }

  @Test
  void whatTheUserOpenedStaysWhole() {
    boolean[] folded = fold(new double[] {100, 110, 120, 130}, 200, KEEP, 2, 2, 2);
    assertThat(folded[0]).isFalse();
    assertThat(folded).contains(true);
  }

  @Property
  void eitherEveryNoteIsNearItsLineOrOnlyOneIsWhole(
      @ForAll @Size(min = 1, max = 12) double @DoubleRange(min = 0, max = 640) [] lines,
      @ForAll @IntRange(max = 2) int rank) {
    double[] wanted = lines.clone();
    java.util.Arrays.sort(wanted);
    double[] whole = new double[wanted.length];
    int[] ranks = new int[wanted.length];
    java.util.Arrays.fill(whole, 110);
    java.util.Arrays.fill(ranks, rank);
    boolean[] folded = NoteFolds.of(wanted, whole, 30, ranks, KEEP, 8, 16, 5000);
    double[] heights = new double[wanted.length];
    int left = 0;
    for (int i = 0; i < heights.length; i++) {
      heights[i] = folded[i] ? 30 : whole[i];
      left += folded[i] ? 0 : 1;
    }
    double[] places = NoteStack.place(wanted, heights, 8, 16);
    for (int i = 0; i < places.length && left > 1; i++) {
      assertThat(Math.abs(places[i] - Math.max(16, wanted[i]))).isLessThanOrEqualTo(NoteFolds.NEAR);
    }
  }
}
