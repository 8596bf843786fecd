package dev.gantrywright.cli;

/** A number with its noun: 1 line, 2 lines. */
final class Counted {
  private Counted() {}

  static String of(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  /** 1 of 20 comparisons differs, 2 of 20 comparisons differ. */
  static String differ(long count, long all) {
    return count + " of " + of(all, "comparison") + (count == 1 ? " differs" : " differ");
  }
}
