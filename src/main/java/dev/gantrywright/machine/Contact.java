package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Electrical contact at rest. */
public enum Contact {
  /** Normally open: the touch closes it. */
  @JsonProperty("NO")
  NO,

  /** Normally closed: the touch opens it. */
  @JsonProperty("NC")
  NC;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
