package dev.gantrywright.header;

/** A condition that is not a constant expression of C; the message says what is wrong with it. */
final class ConditionError extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ConditionError(String message) {
    super(message, null, false, false);
  }
}
