package dev.gantrywright.names;

/** How a profile value is to stand in the folder. */
public sealed interface Spelled {
  /** As this text. */
  record Text(String text) implements Spelled {}

  /** As the text that stands there already, however that is written. */
  record AlreadySo() implements Spelled {}

  /** As a {@code #define} switched on. */
  record On() implements Spelled {}

  /** As a {@code #define} commented out. */
  record Off() implements Spelled {}

  /** Not at all; {@code reason} is one line. */
  record Not(String reason) implements Spelled {}
}
