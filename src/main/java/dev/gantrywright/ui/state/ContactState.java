package dev.gantrywright.ui.state;

/** What is known of an endstop at this moment. */
public enum ContactState {
  OPEN("open"),
  TRIGGERED("triggered"),
  UNKNOWN("not known");

  private final String word;

  ContactState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
