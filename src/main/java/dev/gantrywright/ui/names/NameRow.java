package dev.gantrywright.ui.names;

import dev.gantrywright.names.NameEntry;
import dev.gantrywright.ui.state.PlaceNames;
import java.util.Locale;

/**
 * One profile field with what is known of its name.
 *
 * @param entry null where nothing was found for it
 */
record NameRow(String path, NameEntry entry) {
  /** How a field's name stands. */
  enum Standing {
    /** Proposed, but not surely: asks. */
    ASKS,
    /** Learned surely. */
    LEARNED,
    /** The user accepted the proposal. */
    ACCEPTED,
    /** The user picked the place or changed what it means. */
    CHOSEN,
    /** The user says that the firmware has no such setting. */
    NONE,
    /** Nothing was found. */
    NOT_FOUND
  }

  Standing standing() {
    if (entry == null) {
      return Standing.NOT_FOUND;
    }
    if (entry.macro() == null) {
      return entry.byUser() ? Standing.NONE : Standing.NOT_FOUND;
    }
    if (!entry.sure()) {
      return Standing.ASKS;
    }
    return entry.confirmed()
        ? Standing.ACCEPTED
        : entry.byUser() ? Standing.CHOSEN : Standing.LEARNED;
  }

  String label() {
    return PlaceNames.field(path);
  }

  /** The macro with the index of its part; empty where there is none. */
  String macro() {
    return entry == null || entry.macro() == null ? "" : shown(entry.macro(), entry.element());
  }

  static String shown(String macro, Integer element) {
    return element == null ? macro : macro + "[" + element + "]";
  }

  String place() {
    return entry == null || entry.file() == null ? "" : entry.file() + ":" + entry.line();
  }

  String percent() {
    return entry == null || entry.macro() == null ? "" : percent(entry.confidence());
  }

  /** With a no-break space, after the SI brochure, 5.4.7. */
  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f\u00a0%%", 100 * share);
  }

  /** Whether each word that is typed stands in its label, path, macro or file. */
  boolean matches(String typed) {
    String all = (label() + " " + path + " " + macro() + " " + place()).toLowerCase(Locale.ROOT);
    for (String word : typed.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
      if (!all.contains(word)) {
        return false;
      }
    }
    return true;
  }
}
