package dev.gantrywright.ui.describe;

import java.util.Locale;

/**
 * One thing that a picker offers.
 *
 * @param value what goes into the field
 * @param about what tells it from the others, such as flash and clock of a part
 */
public record PickerChoice(String value, String about) {
  /** Whether every typed word occurs in it, in any order and any case. */
  public boolean matches(String typed) {
    String all = (value + " " + about).toLowerCase(Locale.ROOT);
    for (String word : typed.toLowerCase(Locale.ROOT).split("\\s+")) {
      if (!all.contains(word)) {
        return false;
      }
    }
    return true;
  }
}
