package dev.gantrywright.prove;

/**
 * What one endstop did while one was pressed.
 *
 * @param held it differed from rest for most of the press
 * @param changes how often it changed
 * @param middleChanges changes away from beginning and end of the press: noise rather than bounce
 * @param longestBounceNanos longest run of close changes
 */
public record PressEffect(boolean held, int changes, int middleChanges, long longestBounceNanos) {
  static final PressEffect NONE = new PressEffect(false, 0, 0, 0);

  /** Changes all through the press: picked up from somewhere. */
  public boolean noisy() {
    return middleChanges >= 3;
  }
}
