package dev.gantrywright.report.sheet;

/** The mark before a text; the text says the same in words. */
public enum Sign {
  NONE(""),
  FINE("settled"),
  NOTE("note"),
  WARNING("warning"),
  ERROR("error"),
  /** Not done yet. */
  OPEN("open");

  private final String word;

  Sign(String word) {
    this.word = word;
  }

  /** For readers who do not see it. */
  public String word() {
    return word;
  }
}
