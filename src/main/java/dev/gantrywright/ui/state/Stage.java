package dev.gantrywright.ui.state;

import java.util.Locale;

/** The six stages, in the order of the work. */
public enum Stage {
  DESCRIBE,
  CHECK,
  WRITE,
  BUILD,
  LOAD,
  PROVE;

  public String title() {
    return Texts.of("stage." + name().toLowerCase(Locale.ROOT));
  }
}
