package dev.gantrywright.ui.theme;

/** Light or dark surface. */
public enum Mode {
  LIGHT("light"),
  DARK("dark");

  private final String word;

  Mode(String word) {
    this.word = word;
  }

  /** As the token file and the settings spell it. */
  public String word() {
    return word;
  }

  /** The other one. */
  public Mode other() {
    return this == LIGHT ? DARK : LIGHT;
  }
}
