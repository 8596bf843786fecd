package dev.gantrywright.patch;

import dev.gantrywright.header.Change;
import java.util.List;

/**
 * What one profile value, or one word of the command line, asks of the folder.
 *
 * @param path the profile field; empty for a change given by hand
 * @param value the profile's value, or what was given by hand
 * @param macro the macro or key
 * @param changes what is to be done for it, all of them
 */
record Wish(String path, String value, String macro, List<Change> changes) {
  Wish {
    changes = List.copyOf(changes);
  }

  /** What the header engine keeps with each change. */
  String cause() {
    return path.isEmpty() ? value : path + " = " + value;
  }
}
