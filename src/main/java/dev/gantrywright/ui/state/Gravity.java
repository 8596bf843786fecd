package dev.gantrywright.ui.state;

/** How grave a note is, worst first. */
public enum Gravity {
  ERROR("error"),
  WARNING("warning"),
  NOTE("note");

  private final String word;

  Gravity(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** Whether this one is at least as grave. */
  public boolean atLeast(Gravity other) {
    return compareTo(other) <= 0;
  }
}
