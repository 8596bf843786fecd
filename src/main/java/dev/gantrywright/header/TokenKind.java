package dev.gantrywright.header;

/** Kinds of preprocessing token (C17 6.4). */
enum TokenKind {
  NAME,
  NUMBER,
  CHARACTER,
  STRING,
  PUNCTUATOR,
  /** A byte that starts no other token, or a literal that is not closed. */
  OTHER,
  /** An empty argument of {@code ##} (C17 6.10.3.3). */
  PLACEMARKER
}
