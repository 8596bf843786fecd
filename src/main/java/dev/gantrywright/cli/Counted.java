package dev.gantrywright.cli;

/** A number with its noun: 1 line, 2 lines. */
final class Counted {
  private Counted() {}

  static String of(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  /** What compares: 1 comparison agrees, 2 comparisons agree. */
  static String agree(long count) {
    return of(count, "comparison") + (count == 1 ? " agrees" : " agree");
  }
}
