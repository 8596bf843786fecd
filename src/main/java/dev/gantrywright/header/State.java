package dev.gantrywright.header;

/** Whether the compiler sees a line: a three-valued answer. */
public enum State {
  /** No condition above the line can keep it from the compiler. */
  LIVE,
  /** A condition above the line is false, so the compiler skips it. */
  DEAD,
  /**
   * It depends on a name that the folder does not settle, such as one that the compiler defines.
   */
  OPEN
}
