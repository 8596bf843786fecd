package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Parity of a serial frame. */
public enum Parity {
  @JsonProperty("none")
  NONE,

  @JsonProperty("even")
  EVEN,

  @JsonProperty("odd")
  ODD;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
