package dev.gantrywright.rules;

import java.util.Locale;

/** A family of rules: one sub-package, one folder of pages, one letter in the ids. */
public enum Family {
  BOARD('B', "Board and microcontroller"),
  SERIAL('S', "Serial"),
  ENDSTOPS('E', "Endstops"),
  MOTION('M', "Motion"),
  DRIVERS('D', "Drivers and motors"),
  THERMAL('T', "Thermal"),
  POWER('P', "Power and safety"),
  FOLDER('F', "Firmware folder"),
  /** Faults of the rule book itself; holds no rules. */
  INTERNAL('X', "Internal");

  private final char letter;
  private final String title;
  private final String word = name().toLowerCase(Locale.ROOT);

  Family(char letter, String title) {
    this.letter = letter;
    this.title = title;
  }

  /** The letter in this family's ids, {@code GW-S003}. */
  public char letter() {
    return letter;
  }

  /** As headings show it. */
  public String title() {
    return title;
  }

  /** As folders and reports spell it. */
  public String word() {
    return word;
  }
}
