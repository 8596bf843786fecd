package dev.gantrywright.names;

/**
 * A place of a firmware folder that could carry a value: a setting, one part of a list, or a key of
 * the build settings.
 *
 * @param macro name of the macro or key
 * @param element index of the part; null for the whole value
 * @param text the text that stands there; empty for a bare {@code #define}
 * @param comment what the folder says beside and above it
 * @param file relative to the folder
 * @param line counted from 1
 * @param section section of a build-settings key; null for a macro
 * @param on false where it is commented out
 */
public record FoundPlace(
    String macro,
    Integer element,
    String text,
    String comment,
    String file,
    int line,
    String section,
    boolean on) {
  /** Its name, with the index of the part. */
  public String shown() {
    return element == null ? macro : macro + "[" + element + "]";
  }
}
