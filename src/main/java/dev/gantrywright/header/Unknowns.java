package dev.gantrywright.header;

import java.util.function.Predicate;

/**
 * How an evaluation takes a name that has no definition in force.
 *
 * @param open whether it may be unknown at all
 * @param settled whether the files at hand settle a name, so that without a definition it is not
 *     defined
 */
record Unknowns(boolean open, Predicate<String> settled) {
  /** As a compiler does: without a definition it is not defined. */
  static Unknowns undefined() {
    return new Unknowns(false, new Every());
  }

  /** Unknown unless the files at hand settle it. */
  static Unknowns open(Predicate<String> settled) {
    return new Unknowns(true, settled);
  }

  /** A class rather than a lambda: a run over a few headers should not pay for making one. */
  private static final class Every implements Predicate<String> {
    @Override
    public boolean test(String name) {
      return true;
    }
  }
}
