package dev.gantrywright.header;

/** What a condition asks of the place where it stands. */
interface ConditionNames {
  /** The macro that a name expands to here, or null to leave the name alone. */
  MacroBody macro(String name);

  /** Whether the name is defined here. */
  Truth defined(String name);

  /** The value of a name that is left when all macros are replaced (C17 6.10.1p4: zero). */
  CValue leftOver(String name);

  /** The value of a name followed by an argument list, or null if that is an error here. */
  CValue call(String name, String argument);

  /** Whether a header can be found; the text keeps its quotes or angle brackets. */
  Truth hasInclude(String header, boolean next);
}
