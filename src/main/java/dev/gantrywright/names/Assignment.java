package dev.gantrywright.names;

import java.util.Arrays;

/**
 * The assignment of rows to columns with the greatest sum, each row and column used at most once:
 * the Hungarian method with potentials, O(rows² · columns). Source: J. Munkres, Algorithms for the
 * Assignment and Transportation Problems, 1957; potentials after R. Jonker and A. Volgenant, 1987.
 */
final class Assignment {
  private Assignment() {}

  /**
   * Assigns.
   *
   * @param gain of each row and column; a row stays free where no positive gain is left for it
   * @return the column of each row, -1 where it stays free
   */
  static int[] best(double[][] gain) {
    int rows = gain.length;
    int given = rows == 0 ? 0 : gain[0].length;
    int columns = given + rows;
    double[] rowPotential = new double[rows + 1];
    double[] columnPotential = new double[columns + 1];
    int[] rowOf = new int[columns + 1];
    int[] way = new int[columns + 1];
    double[] least = new double[columns + 1];
    boolean[] used = new boolean[columns + 1];
    for (int row = 1; row <= rows; row++) {
      rowOf[0] = row;
      int column = 0;
      Arrays.fill(least, Double.POSITIVE_INFINITY);
      Arrays.fill(used, false);
      do {
        used[column] = true;
        int at = rowOf[column];
        double delta = Double.POSITIVE_INFINITY;
        int next = 0;
        for (int j = 1; j <= columns; j++) {
          if (used[j]) {
            continue;
          }
          double cost = j <= given ? -gain[at - 1][j - 1] : 0;
          double reduced = cost - rowPotential[at] - columnPotential[j];
          if (reduced < least[j]) {
            least[j] = reduced;
            way[j] = column;
          }
          if (least[j] < delta) {
            delta = least[j];
            next = j;
          }
        }
        for (int j = 0; j <= columns; j++) {
          if (used[j]) {
            rowPotential[rowOf[j]] += delta;
            columnPotential[j] -= delta;
          } else {
            least[j] -= delta;
          }
        }
        column = next;
      } while (rowOf[column] != 0);
      do {
        int before = way[column];
        rowOf[column] = rowOf[before];
        column = before;
      } while (column != 0);
    }
    int[] result = new int[rows];
    Arrays.fill(result, -1);
    for (int j = 1; j <= given; j++) {
      if (rowOf[j] != 0) {
        result[rowOf[j] - 1] = j - 1;
      }
    }
    return result;
  }
}
