package dev.gantrywright.patch;

/**
 * One line that a plan changes, and why.
 *
 * @param file relative to the folder
 * @param line counted from 1, in the file before the change
 * @param before the line as it stands
 * @param after the line as it will stand
 * @param macro the macro or key
 * @param path the profile field that asks for it; empty for a change given by hand
 * @param value the profile's value, or what was given by hand
 * @param note what the editor should know; empty where there is nothing to say
 */
public record PlannedLine(
    String file,
    int line,
    String before,
    String after,
    String macro,
    String path,
    String value,
    String note) {
  /** Why the line changes, in one clause. */
  public String cause() {
    return path.isEmpty() ? value : path + " = " + value;
  }
}
