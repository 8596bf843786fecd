package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What makes the contact. */
public enum SensorKind {
  /** A plain switch between the input and ground (or supply, with a pull-down). */
  @JsonProperty("switch")
  SWITCH,

  /** Three-wire sensor whose output sinks current. */
  @JsonProperty("npn")
  NPN,

  /** Three-wire sensor whose output sources current. */
  @JsonProperty("pnp")
  PNP;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
