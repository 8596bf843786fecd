package dev.gantrywright.ui.describe;

/**
 * Which notes of a crowded margin fold to one line: as many as it takes for the others to stand
 * near the lines that they speak of, the least grave first.
 */
final class NoteFolds {
  /** A note further than this from its line seems to speak of another one, pixels. */
  static final double NEAR = 96;

  private NoteFolds() {}

  /**
   * Decides for notes in the order of their lines.
   *
   * @param wanted where each note would stand if it were alone, from the top
   * @param whole heights unfolded
   * @param line height of a folded one
   * @param ranks how much each matters; one of at least {@code keep} never folds
   * @param keep rank from which a note stays whole
   * @param gap least space between two
   * @param top highest place taken
   * @param bottom lowest place seen without scrolling
   */
  static boolean[] of(
      double[] wanted,
      double[] whole,
      double line,
      int[] ranks,
      int keep,
      double gap,
      double top,
      double bottom) {
    boolean[] folded = new boolean[wanted.length];
    double[] heights = whole.clone();
    for (int round = 0; round < wanted.length; round++) {
      double[] places = NoteStack.place(wanted, heights, gap, top);
      int next = next(wanted, places, heights, folded, ranks, keep, top, bottom);
      if (next < 0) {
        break;
      }
      folded[next] = true;
      heights[next] = line;
    }
    return folded;
  }

  /** The least grave unfolded note among those that push each other, or -1. */
  private static int next(
      double[] wanted,
      double[] places,
      double[] heights,
      boolean[] folded,
      int[] ranks,
      int keep,
      double top,
      double bottom) {
    int crowded = -1;
    for (int i = 0; i < places.length && crowded < 0; i++) {
      boolean far = Math.abs(places[i] - Math.max(top, wanted[i])) > NEAR;
      // The last note may hang over the foot where its own line is near it.
      boolean over = places[i] + heights[i] > bottom && wanted[i] < bottom - heights[i];
      if (far || over) {
        crowded = i;
      }
    }
    if (crowded < 0) {
      return -1;
    }
    int least = -1;
    int left = 0;
    for (int i = 0; i < places.length; i++) {
      left += folded[i] ? 0 : 1;
      boolean may = !folded[i] && ranks[i] < keep;
      if (may
          && (least < 0
              || ranks[i] < ranks[least]
              || ranks[i] == ranks[least] && Math.abs(i - crowded) <= Math.abs(least - crowded))) {
        least = i;
      }
    }
    // One note stays whole: the gravest, or the one that the user has in hand.
    return left > 1 ? least : -1;
  }
}
