package dev.gantrywright.ui.names;

import dev.gantrywright.ui.names.NameRow.Standing;
import java.util.EnumSet;
import java.util.Set;

/** Which rows the list shows. */
enum NameFilter {
  ALL(EnumSet.allOf(Standing.class)),
  ASKS(EnumSet.of(Standing.ASKS)),
  MINE(EnumSet.of(Standing.ACCEPTED, Standing.CHOSEN, Standing.NONE)),
  NOT_FOUND(EnumSet.of(Standing.NOT_FOUND));

  private final Set<Standing> shown;

  NameFilter(Set<Standing> shown) {
    this.shown = shown;
  }

  boolean shows(NameRow row) {
    return shown.contains(row.standing());
  }

  /** As the bundle calls it. */
  String key() {
    return "names.filter." + name().toLowerCase(java.util.Locale.ROOT);
  }
}
