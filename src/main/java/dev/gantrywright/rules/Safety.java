package dev.gantrywright.rules;

/** How far a remedy may be trusted. */
public enum Safety {
  /** Follows from facts already stated; "apply all" takes it. */
  SAFE("safe"),
  /** Right in most cases, but one of the stated facts may be the wrong one: look first. */
  REVIEW("review"),
  /** Work for the hand, not an edit. */
  SHOW_ONLY("show only");

  private final String word;

  Safety(String word) {
    this.word = word;
  }

  /** As reports and the command line spell it. */
  public String word() {
    return word;
  }
}
