package dev.gantrywright.header;

/** Whether a condition holds; unknown when it depends on a name that the folder does not settle. */
enum Truth {
  TRUE,
  FALSE,
  UNKNOWN;

  static Truth of(boolean value) {
    return value ? TRUE : FALSE;
  }
}
