package dev.gantrywright.prove;

/** How an endstop came out of the touch test. */
public enum TouchVerdict {
  WORKS("works"),
  INVERTED("is inverted"),
  SWAPPED("is swapped with another"),
  SHARED("shares an input with another"),
  STUCK("always reads triggered"),
  NEVER_CHANGES("never changes"),
  BOUNCING("bounces"),
  NOISY("picks up noise while others are pressed"),
  NOT_TESTED("was not tested");

  private final String phrase;

  TouchVerdict(String phrase) {
    this.phrase = phrase;
  }

  /** After the endstop's name. */
  public String phrase() {
    return phrase;
  }
}
