package dev.gantrywright.ui.quantity;

/** What a typed text came to. */
public sealed interface Reading {
  /** A number in the field's unit. */
  record Number(double value) implements Reading {}

  /** Nothing typed: the value is not given. */
  record Nothing() implements Reading {}

  /**
   * Not readable.
   *
   * @param why one clear line: what, and what to type instead
   */
  record Unread(String why) implements Reading {}
}
