package dev.gantrywright.header;

/** A condition that asks for more expansion, or deeper nesting, than the engine grants it. */
final class ExpansionLimit extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ExpansionLimit(String message) {
    super(message, null, false, false);
  }
}
