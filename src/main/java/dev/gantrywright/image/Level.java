package dev.gantrywright.image;

/** How much a remark weighs; the words are those of SARIF. */
public enum Level {
  /** The image must not be loaded. */
  ERROR,
  /** Look before loading. */
  WARNING,
  /** Good to know. */
  NOTE;

  /** Lower case, as SARIF writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
