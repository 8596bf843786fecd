package dev.gantrywright.patch;

/**
 * A value that a plan does not write, and why.
 *
 * @param path the profile field; empty for a change given by hand
 * @param macro the macro or key that it was meant for; empty where none is known
 * @param value the profile's value, or what was given by hand
 * @param reason one line
 */
public record Refusal(String path, String macro, String value, String reason) {
  /** The refusal as one line. */
  @Override
  public String toString() {
    String what = path.isEmpty() ? value : path + " = " + value;
    return what + ": not written: " + reason;
  }
}
