package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AssignmentTest {
  @Test
  void theGreatestSumMayLeaveARowItsSecondChoice() {
    assertThat(Assignment.best(new double[][] {{5, 4}, {5, 1}})).containsExactly(1, 0);
  }

  @Test
  void rowsWithoutGainStayFree() {
    assertThat(Assignment.best(new double[][] {{-1, -2}, {3, -1}})).containsExactly(-1, 0);
    assertThat(Assignment.best(new double[0][])).isEmpty();
    assertThat(Assignment.best(new double[][] {{}})).containsExactly(-1);
  }

  @Property(tries = 300)
  void noOtherAssignmentIsBetter(
      @ForAll @IntRange(min = 1, max = 5) int rows,
      @ForAll @IntRange(min = 1, max = 6) int columns,
      @ForAll long seed) {
    Random random = new Random(seed);
    double[][] gain = new double[rows][columns];
    for (double[] row : gain) {
      for (int j = 0; j < columns; j++) {
        row[j] = random.nextInt(21) - 6;
      }
    }
    int[] best = Assignment.best(gain);
    double sum = 0;
    Set<Integer> used = new HashSet<>();
    for (int i = 0; i < rows; i++) {
      if (best[i] >= 0) {
        assertThat(used.add(best[i])).isTrue();
        sum += gain[i][best[i]];
      }
    }
    assertThat(sum).isEqualTo(search(gain, 0, 0));
  }

  private static double search(double[][] gain, int row, int used) {
    if (row == gain.length) {
      return 0;
    }
    double best = search(gain, row + 1, used);
    for (int j = 0; j < gain[row].length; j++) {
      if ((used & (1 << j)) == 0) {
        best = Math.max(best, gain[row][j] + search(gain, row + 1, used | (1 << j)));
      }
    }
    return best;
  }
}
