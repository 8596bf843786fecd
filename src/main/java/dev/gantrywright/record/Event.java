package dev.gantrywright.record;

import java.time.Instant;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One thing that was done with a printer.
 *
 * @param number its place in the file, from 1; it changes where histories are merged
 * @param id first {@value #ID_DIGITS} digits of the SHA-256 of its line; it stays
 * @param time to the millisecond, UTC
 * @param kind see {@link EventKind}; a kind that a newer version wrote is kept
 * @param by who did it; empty where that is not known
 * @param state fingerprint of the profile at that time, see {@link ProfileState}
 * @param text the profile itself; empty where an earlier event of the file holds it
 * @param facts what is known of it, by its kind
 */
public record Event(
    int number,
    String id,
    Instant time,
    String kind,
    String by,
    String state,
    Optional<String> text,
    JsonNode facts) {
  static final int ID_DIGITS = 8;

  /** Whether it is of this kind. */
  public boolean is(EventKind other) {
    return kind.equals(other.word());
  }
}
