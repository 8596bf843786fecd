package dev.gantrywright.record;

import java.util.Arrays;
import java.util.Optional;

/** What was done with a printer. */
public enum EventKind {
  EXPORT("export"),
  BUILD("build"),
  LOAD("load"),
  PROOF("proof"),
  TOUCH_TEST("touch-test"),
  CALIBRATION("calibration"),
  /** The rise of a heater's temperature was recorded. */
  HEAT_UP("heat-up"),
  /** The profile was brought back to an earlier state. */
  RETURN("return"),
  /** A remark of the user, or a state kept before it is replaced. */
  NOTE("note");

  private final String word;

  EventKind(String word) {
    this.word = word;
  }

  /** As it stands in the file. */
  public String word() {
    return word;
  }

  /** Empty for a kind that a newer version wrote. */
  public static Optional<EventKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }
}
