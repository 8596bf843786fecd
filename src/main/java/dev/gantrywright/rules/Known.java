package dev.gantrywright.rules;

/** Whether the facts that a rule needs are stated; a rule is silent about what it is not told. */
public final class Known {
  private Known() {}

  /** True where none of the facts is null. */
  public static boolean known(Object... facts) {
    for (Object fact : facts) {
      if (fact == null) {
        return false;
      }
    }
    return true;
  }
}
